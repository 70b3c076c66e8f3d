#pragma once

#include <QString>
#include <QStringList>

#include <memory>
#include <vector>

class QTranslator;

namespace lathhouse {

/// The language of the window, from the call on until it goes. One at a time, beside the application and before
/// anything that is shown is made: what was said before stays as it was.
class Tongue {
public:
    /// code: as models::language_in_force gives it. Also sets how dates and numbers are written, and where lines begin.
    explicit Tongue(const QString& code);
    ~Tongue();
    Tongue(const Tongue&) = delete;
    Tongue& operator=(const Tongue&) = delete;

    /// Every sentence that was asked for and has no translation, with where it comes from; nothing in English.
    QStringList missing() const;

private:
    class Table;
    std::unique_ptr<Table> table_;
    std::vector<std::unique_ptr<QTranslator>> of_qt_;
};

} // namespace lathhouse
