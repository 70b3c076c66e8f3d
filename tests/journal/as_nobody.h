#pragma once

#include <gtest/gtest.h>

#include <cstdlib>
#include <unistd.h>

namespace lathhouse::journal {

/// While it lives this process has the rights of a user who owns nothing. Tests are often run by an administrator, whom
/// the system refuses nothing; for any other user the rights that a test has set hold as they are.
class AsNobody {
public:
    AsNobody()
    {
        constexpr uid_t kNobody = 65534;
        // The first is the user whom access() asks for; the last is the way back.
        if (was_ == 0 && setresuid(kNobody, kNobody, was_) != 0) {
            ADD_FAILURE() << "the rights could not be laid down";
        }
    }
    AsNobody(const AsNobody&) = delete;
    AsNobody& operator=(const AsNobody&) = delete;
    ~AsNobody()
    {
        if (was_ == 0 && setresuid(was_, was_, was_) != 0) {
            std::abort(); // Whatever ran after it would tell nothing.
        }
    }

private:
    uid_t was_ = geteuid();
};

} // namespace lathhouse::journal
