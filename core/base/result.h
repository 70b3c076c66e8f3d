#pragma once

#include "core/base/said.h"

#include <cassert>
#include <concepts>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

namespace lathhouse {

enum class ErrorCode {
    OutOfRange,    ///< A value lies outside what it may be.
    Malformed,     ///< Text or a file does not have the form it should.
    WrongUsage,    ///< A request contradicts itself or lacks something.
    NotFound,      ///< A file, row, name or id is not there.
    Unreadable,    ///< A file is there and cannot be read.
    Unwritable,    ///< A file or folder cannot be written (rights, full disk).
    Locked,        ///< Another program holds the file.
    Damaged,       ///< A file of ours that fails its own checks.
    NotAHousehold, ///< A folder or file that this program did not make.
    TooNew,        ///< A file written by a newer version of the program.
    TooFewYears,   ///< A record too short for the question.
    NoStation,     ///< No station near enough for any answer.
    Unavailable,   ///< Something of the system that is needed is missing.
};

/// What went wrong, with the number and the place. `message` is one sentence without a final full stop that
/// says what, where and what to do; it is shown to people after "lathhouse: ". Rooms of the core make it with `said`,
/// so that the window can say it in the reader's language (`words::refusal`): Error{ErrorCode::NotFound, said("...",
/// part)}.
struct Error {
    ErrorCode code = ErrorCode::Unavailable;
    std::string message;
    const char* sentence = nullptr; ///< And its parts: what `message` was made from, as in Said.
    std::vector<Said> parts;

    Error() = default;
    /// What is said in one language only, as the command line does.
    Error(ErrorCode of, std::string text) : code(of), message(std::move(text)) {}
    Error(ErrorCode of, Said why)
        : code(of), message(std::move(why.text)), sentence(why.sentence), parts(std::move(why.parts))
    {
    }

    /// Errors that read alike are equal.
    friend bool operator==(const Error& one, const Error& other)
    {
        return one.code == other.code && one.message == other.message;
    }
};

/// Name of a code for tests and logs.
std::string_view to_string(ErrorCode code);

/// A value or the Error that stands in its place. Member names are those of std::expected, so that C++23 can
/// replace it with an alias. `value()` and `error()` assert that their side is there.
template <class T>
class [[nodiscard]] Result {
public:
    using value_type = T;

    template <class U = T>
    requires(std::constructible_from<T, U&&> && !std::same_as<std::remove_cvref_t<U>, Result> &&
             !std::same_as<std::remove_cvref_t<U>, Error>) constexpr Result(U&& value)
        : content_(std::in_place_index<0>, std::forward<U>(value))
    {
    }
    Result(Error error) : content_(std::in_place_index<1>, std::move(error)) {}

    constexpr bool has_value() const { return content_.index() == 0; }
    constexpr explicit operator bool() const { return has_value(); }

    constexpr const T& value() const&
    {
        assert(has_value());
        return *std::get_if<0>(&content_);
    }
    constexpr T& value() &
    {
        assert(has_value());
        return *std::get_if<0>(&content_);
    }
    constexpr T&& value() &&
    {
        assert(has_value());
        return std::move(*std::get_if<0>(&content_));
    }
    const Error& error() const
    {
        assert(!has_value());
        return *std::get_if<1>(&content_);
    }

    constexpr const T& operator*() const& { return value(); }
    constexpr T& operator*() & { return value(); }
    constexpr T&& operator*() && { return std::move(*this).value(); }
    constexpr const T* operator->() const { return &value(); }
    constexpr T* operator->() { return &value(); }

    template <class U>
    T value_or(U&& fallback) const&
    {
        return has_value() ? value() : static_cast<T>(std::forward<U>(fallback));
    }

    /// Continues with `next(value)`, which itself returns a Result.
    template <class F>
    auto and_then(F&& next) const -> std::invoke_result_t<F, const T&>
    {
        if (!has_value()) {
            return error();
        }
        return std::forward<F>(next)(value());
    }
    /// Wraps `change(value)`.
    template <class F>
    auto transform(F&& change) const -> Result<std::invoke_result_t<F, const T&>>
    {
        if (!has_value()) {
            return error();
        }
        return std::forward<F>(change)(value());
    }

private:
    std::variant<T, Error> content_;
};

/// Success without a value, or an Error.
template <>
class [[nodiscard]] Result<void> {
public:
    Result() = default;
    Result(Error error) : content_(std::in_place_index<1>, std::move(error)) {}
    bool has_value() const { return content_.index() == 0; }
    explicit operator bool() const { return has_value(); }
    const Error& error() const
    {
        assert(!has_value());
        return *std::get_if<1>(&content_);
    }

private:
    std::variant<std::monostate, Error> content_;
};

} // namespace lathhouse
