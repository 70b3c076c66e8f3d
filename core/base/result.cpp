#include "core/base/result.h"

namespace lathhouse {

std::string_view to_string(ErrorCode code)
{
    switch (code) {
    case ErrorCode::OutOfRange:
        return "OutOfRange";
    case ErrorCode::Malformed:
        return "Malformed";
    case ErrorCode::WrongUsage:
        return "WrongUsage";
    case ErrorCode::NotFound:
        return "NotFound";
    case ErrorCode::Unreadable:
        return "Unreadable";
    case ErrorCode::Unwritable:
        return "Unwritable";
    case ErrorCode::Locked:
        return "Locked";
    case ErrorCode::Damaged:
        return "Damaged";
    case ErrorCode::NotAHousehold:
        return "NotAHousehold";
    case ErrorCode::TooNew:
        return "TooNew";
    case ErrorCode::TooFewYears:
        return "TooFewYears";
    case ErrorCode::NoStation:
        return "NoStation";
    case ErrorCode::Unavailable:
        return "Unavailable";
    }
    return "Unknown";
}

} // namespace lathhouse
