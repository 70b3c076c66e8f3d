#include "app/album.h"

#include <QDir>

#include <iostream>

namespace lathhouse {

Album Album::of_environment()
{
    Album album;
    album.folder_ = qEnvironmentVariable("LATHHOUSE_PICTURES");
    if (album.wanted() && !QDir().mkpath(album.folder_)) {
        std::cerr << "lathhouse: the folder " << album.folder_.toStdString() << " cannot be made; no picture is kept\n";
        album.folder_.clear();
    }
    return album;
}

void Album::keep(const QString& name, const QImage& shown)
{
    if (!wanted() || names_.contains(name)) {
        return;
    }
    const QString file = QDir(folder_).filePath(name + QStringLiteral(".png"));
    if (shown.isNull() || !shown.save(file, "PNG")) {
        std::cerr << "lathhouse: the picture could not be written to " << file.toStdString() << '\n';
        return;
    }
    names_.append(name);
}

std::optional<QSize> size_of_environment()
{
    const QStringList sides = qEnvironmentVariable("LATHHOUSE_SIZE").split(QLatin1Char('x'));
    if (sides.size() != 2) {
        return std::nullopt;
    }
    const QSize size(sides[0].toInt(), sides[1].toInt());
    constexpr int kLargest = 8000;
    return size.isEmpty() || size.width() > kLargest || size.height() > kLargest ? std::nullopt : std::optional{size};
}

} // namespace lathhouse
