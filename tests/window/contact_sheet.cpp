#include <QGuiApplication>
#include <QImage>
#include <QPainter>
#include <QString>
#include <QStringList>

#include <algorithm>
#include <cstdlib>
#include <iostream>
#include <unordered_map>
#include <vector>

namespace {

/// At most 256 colours that stand for those of the picture: the most frequent ones, none too near to another.
QList<QRgb> colours_of(const QImage& picture)
{
    constexpr int kColours = 256;
    constexpr QRgb kRough = 0xFFFCFCFC; // Four neighbours are one.
    std::unordered_map<QRgb, int> counted;
    for (int y = 0; y < picture.height(); ++y) {
        const auto* line = reinterpret_cast<const QRgb*>(picture.constScanLine(y));
        for (int x = 0; x < picture.width(); ++x) {
            ++counted[line[x] & kRough];
        }
    }
    std::vector<std::pair<QRgb, int>> ranked(counted.begin(), counted.end());
    std::ranges::sort(ranked, [](const auto& a, const auto& b) { return std::pair{-a.second, a.first} < std::pair{-b.second, b.first}; });
    const auto distance = [](QRgb a, QRgb b) {
        return std::abs(qRed(a) - qRed(b)) + std::abs(qGreen(a) - qGreen(b)) + std::abs(qBlue(a) - qBlue(b));
    };
    QList<QRgb> colours;
    // What is left of the room is filled with nearer ones.
    for (int apart = 10; apart >= 1 && colours.size() < kColours; apart /= 2) {
        for (const auto& [colour, count] : ranked) {
            if (colours.size() == kColours) {
                break;
            }
            if (std::ranges::all_of(colours, [&](QRgb kept) { return distance(kept, colour) >= apart; })) {
                colours.append(colour);
            }
        }
    }
    return colours;
}

bool save(const QImage& picture, const QString& file)
{
    const QImage full = picture.convertToFormat(QImage::Format_RGB32);
    const QImage small = full.convertToFormat(QImage::Format_Indexed8, colours_of(full), Qt::DiffuseDither);
    if (small.save(file, "PNG", 0)) {
        return true;
    }
    std::cerr << "contact_sheet: " << file.toStdString() << " could not be written\n";
    return false;
}

QString name_of(const QString& file)
{
    return file.section(QLatin1Char('/'), -1).section(QLatin1Char('.'), 0, 0);
}

} // namespace

/// Puts pictures beside each other, each with its name: contact_sheet OUT.png COLUMNS WIDTH FILE.png..., where WIDTH is
/// that of one of them. With one file and WIDTH 0 it is written as it is, in fewer colours and bytes.
int main(int argc, char** argv)
{
    const QGuiApplication application(argc, argv);
    const QStringList words = QGuiApplication::arguments();
    const int columns = words.value(2).toInt();
    const int width = words.value(3).toInt();
    if (words.size() < 5 || columns < 1 || width < 0) {
        std::cerr << "usage: contact_sheet OUT.png COLUMNS WIDTH FILE.png...\n";
        return 2;
    }
    std::vector<QImage> pictures;
    for (const QString& file : words.sliced(4)) {
        pictures.emplace_back(file);
        if (pictures.back().isNull()) {
            std::cerr << "contact_sheet: " << file.toStdString() << " is no picture\n";
            return 1;
        }
    }
    if (width == 0) {
        return save(pictures.front(), words[1]) ? 0 : 1;
    }
    constexpr int kGap = 12;
    constexpr int kName = 22;
    int height = 0;
    for (QImage& picture : pictures) {
        picture = picture.scaledToWidth(width, Qt::SmoothTransformation);
        height = std::max(height, picture.height());
    }
    const int rows = (static_cast<int>(pictures.size()) + columns - 1) / columns;
    QImage sheet(kGap + columns * (width + kGap), kGap + rows * (height + kName + kGap), QImage::Format_RGB32);
    sheet.fill(Qt::white);
    QPainter painter(&sheet);
    painter.setPen(Qt::black);
    QFont font(QStringLiteral("Open Sans"));
    font.setPixelSize(14);
    painter.setFont(font);
    for (int place = 0; place < static_cast<int>(pictures.size()); ++place) {
        const int x = kGap + place % columns * (width + kGap);
        const int y = kGap + place / columns * (height + kName + kGap);
        painter.drawText(QRect(x, y, width, kName), Qt::AlignLeft | Qt::AlignVCenter, name_of(words[4 + place]));
        painter.drawImage(x, y + kName, pictures[static_cast<std::size_t>(place)]);
    }
    painter.end();
    return save(sheet, words[1]) ? 0 : 1;
}
