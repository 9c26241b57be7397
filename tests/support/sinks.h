// Places to save edits to, for tests of what happens around saving.
#pragma once

#include "core/edit/edit.h"

namespace wainscot {

// Counts what it is given, and fails when told.
class CountingSink final : public EditSink {
public:
    Result<> save(const Edit& /*edit*/) override { return answer(saves); }
    Result<> saveReverted(const Edit& /*edit*/) override { return answer(reverts); }

    bool fails = false;
    int saves = 0;
    int reverts = 0;

private:
    Result<> answer(int& count)
    {
        if (fails)
            return Error{ErrorCode::CannotWrite, QStringLiteral("the disk"), {}};
        ++count;
        return Done{};
    }
};

} // namespace wainscot
