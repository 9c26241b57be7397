// Time is handed in, so that tests and samples can hold it still.
#pragma once

#include <QDateTime>

namespace wainscot {

class Clock {
public:
    Clock() = default;
    Clock(const Clock&) = delete;
    Clock& operator=(const Clock&) = delete;
    virtual ~Clock() = default;
    [[nodiscard]] virtual QDateTime now() const = 0; // local time with its offset
    [[nodiscard]] QDate today() const { return now().date(); }
};

class SystemClock final : public Clock {
public:
    [[nodiscard]] QDateTime now() const override { return QDateTime::currentDateTime(); }
};

class FixedClock final : public Clock {
public:
    explicit FixedClock(QDateTime at)
        : m_at(std::move(at))
    {
    }
    [[nodiscard]] QDateTime now() const override { return m_at; }

private:
    QDateTime m_at;
};

} // namespace wainscot
