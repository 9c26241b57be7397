// What can go wrong, as a value that cannot be ignored.
#pragma once

#include <QString>

#include <cassert>
#include <utility>
#include <variant>

namespace wainscot {

enum class ErrorCode {
    WrongUse, // the caller asked for something that makes no sense
    NotFound, // the file, row or thing is not there
    CannotRead, // exists, but the system refused or it is damaged
    CannotWrite, // no room, no right, read-only
    Damaged, // read, but its content contradicts itself
    TooNew, // made by a later version of the program
    InUse, // another program holds it
    Refused, // a rule forbids it (permission, size cap)
    Cancelled, // the person stopped it
    Internal, // our own mistake
};

// `subject` says which file, row or item; `detail` is technical. The sentence a teacher reads is
// made from code and subject in app, where it can be translated.
struct Error {
    ErrorCode code = ErrorCode::Internal;
    QString subject;
    QString detail;
};

struct Done { };

template <class T = Done> class [[nodiscard]] Result {
public:
    Result(T value) // NOLINT(google-explicit-constructor): `return value;` is the point
        : m_state(std::in_place_index<0>, std::move(value))
    {
    }
    Result(Error error) // NOLINT(google-explicit-constructor): `return error;` is the point
        : m_state(std::in_place_index<1>, std::move(error))
    {
    }

    [[nodiscard]] bool ok() const { return m_state.index() == 0; }
    explicit operator bool() const { return ok(); }

    // REQUIRES: ok()
    [[nodiscard]] T& value() &
    {
        assert(ok());
        return std::get<0>(m_state);
    }
    [[nodiscard]] const T& value() const&
    {
        assert(ok());
        return std::get<0>(m_state);
    }
    [[nodiscard]] T&& value() &&
    {
        assert(ok());
        return std::get<0>(std::move(m_state));
    }
    T& operator*() & { return value(); }
    const T& operator*() const& { return value(); }
    T&& operator*() && { return std::move(*this).value(); }
    T* operator->() { return &value(); }
    const T* operator->() const { return &value(); }

    // REQUIRES: !ok()
    [[nodiscard]] const Error& error() const
    {
        assert(!ok());
        return std::get<1>(m_state);
    }

private:
    std::variant<T, Error> m_state;
};

} // namespace wainscot
