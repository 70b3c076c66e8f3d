#pragma once

#include "core/base/result.h"

#include <filesystem>
#include <memory>

namespace lathhouse::journal {

/// Tells whether anyone wrote into a household's folder: this program, another window, the command line.
///
/// Holds a connection that only reads. Costs some microseconds a question; reading the household is no change.
class ChangeWatch {
public:
    /// Errors: as opening a household that is only read (reading.h).
    static Result<ChangeWatch> open(const std::filesystem::path& folder);

    ChangeWatch(ChangeWatch&&) noexcept;
    ChangeWatch& operator=(ChangeWatch&&) noexcept;
    ~ChangeWatch();

    /// Whether something was committed since the last question, or since it was opened. A file that cannot be asked
    /// any more (taken away, replaced by another, damaged) counts as changed each time, so that whoever reads it says what is wrong.
    /// Source: SQLite, "PRAGMA data_version".
    bool changed();

private:
    struct Inside;
    explicit ChangeWatch(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> inside_;
};

} // namespace lathhouse::journal
