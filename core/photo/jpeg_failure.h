#pragma once

// The header of libjpeg wants these first.
#include <csetjmp>
#include <cstddef>
#include <cstdio>

#include <jpeglib.h>

namespace lathhouse::photo {

/// Where libjpeg goes on a fault, and what it said. It leaves by longjmp, so that nothing with a destructor may live in
/// the functions that call it.
struct JpegFailure {
    jpeg_error_mgr base;
    std::jmp_buf leave;
    char message[JMSG_LENGTH_MAX];
};

[[noreturn]] inline void leave_with_message(j_common_ptr info)
{
    auto* failure = reinterpret_cast<JpegFailure*>(info->err);
    (*info->err->format_message)(info, failure->message);
    std::longjmp(failure->leave, 1);
}

} // namespace lathhouse::photo
