#include "app/i18n/tongue.h"

#include "app/models/window_language.h"
#include "app/words/phrase.h"

#include <QGuiApplication>
#include <QLibraryInfo>
#include <QLocale>
#include <QTranslator>

#include <iostream>
#include <mutex>
#include <set>
#include <string>
#include <utility>

namespace lathhouse {

namespace {

/// The source in brackets, a third longer and read from right to left; placeholders stay where they are.
QString mirrored(const char* source)
{
    QString words = QString::fromUtf8(source);
    const qsizetype longer = words.size() + words.size() / 3;
    while (words.size() < longer) {
        words += QStringLiteral(" ~~~~").left(longer - words.size());
    }
    return QChar(0x200F) + QLatin1Char('[') + words + QLatin1Char(']'); // Begins with the mark of that direction.
}

} // namespace

/// Answers what Qt asks for, and remembers what it could not.
class Tongue::Table : public QTranslator {
public:
    explicit Table(bool mirrors) : mirrors_(mirrors) {}

    bool isEmpty() const override { return !mirrors_ && QTranslator::isEmpty(); }

    QString translate(const char* context, const char* source, const char* disambiguation, int n) const override
    {
        if (source == nullptr || *source == '\0') {
            return {};
        }
        const bool of_qt = context != nullptr && *context == 'Q'; // Classes of Qt; none of ours begins so.
        if (mirrors_) {
            return of_qt ? QString{} : mirrored(source);
        }
        const QString found = QTranslator::translate(context, source, disambiguation, n);
        if (found.isNull() && !of_qt) {
            const std::lock_guard lock(guard_); // Pages are read in threads of their own.
            missing_.insert(QStringLiteral("%1: %2").arg(QString::fromUtf8(context), QString::fromUtf8(source)));
        }
        return found;
    }

    /// For the words that know no Qt; empty: none.
    std::string phrase(const char* source) const
    {
        if (mirrors_) {
            return mirrored(source).toStdString();
        }
        return translate("words", source, nullptr, -1).toStdString(); // The context that renew.py gives them.
    }

    QStringList missing() const
    {
        const std::lock_guard lock(guard_);
        return {missing_.begin(), missing_.end()};
    }

private:
    bool mirrors_;
    mutable std::mutex guard_;
    mutable std::set<QString> missing_;
};

Tongue::Tongue(const QString& code)
{
    const bool mirrors = code == QLatin1String(models::kMirror);
    QLocale::setDefault(models::locale_of_language(code, QLocale::system()));
    QGuiApplication::setLayoutDirection(mirrors ? Qt::RightToLeft : Qt::LeftToRight);
    const QString date = QLocale().dateFormat(QLocale::ShortFormat);
    words::Reader reader{.language = {}, .phrase = {}, .decimal_mark = QLocale().decimalPoint() == QLatin1String(",") ? ',' : '.',
                         .month_first = date.indexOf(QLatin1Char('M')) < date.indexOf(QLatin1Char('d'))};
    if (code == QLatin1String(models::kWindowLanguages.front().code)) {
        words::speak_to(std::move(reader));
        return;
    }
    // What Qt says itself, in its dialogs; where that package is not installed they stay English.
    for (const char* part : {"qtbase_", "qtdeclarative_"}) {
        auto words = std::make_unique<QTranslator>();
        if (words->load(QLatin1String(part) + code, QLibraryInfo::path(QLibraryInfo::TranslationsPath))) {
            QCoreApplication::installTranslator(words.get());
            of_qt_.push_back(std::move(words));
        }
    }
    table_ = std::make_unique<Table>(mirrors);
    if (!mirrors && !table_->load(QStringLiteral(":/i18n/lathhouse_%1.qm").arg(code))) {
        std::cerr << "lathhouse: the table of the language " << code.toStdString()
                  << " is missing from this build; the window stays English\n";
        return;
    }
    QCoreApplication::installTranslator(table_.get());
    if (!mirrors) {
        reader.language = code.toStdString();
    }
    reader.phrase = [this](const char* source) { return table_->phrase(source); };
    words::speak_to(std::move(reader));
}

Tongue::~Tongue()
{
    words::speak_to({}); // A translator that goes takes itself out of the application.
}

QStringList Tongue::missing() const
{
    return table_ ? table_->missing() : QStringList{};
}

} // namespace lathhouse
