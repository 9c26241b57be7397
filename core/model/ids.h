// One kind of id for each kind of thing in a book.
#pragma once

#include "core/base/id.h"

namespace wainscot {

using ChildId = Id<struct ChildTag>;
using PromptSetId = Id<struct PromptSetTag>;
using ExperienceId = Id<struct ExperienceTag>;
using QuoteId = Id<struct QuoteTag>;
using NoAnswerId = Id<struct NoAnswerTag>;
using PermissionRecordId = Id<struct PermissionRecordTag>;
using ObservationId = Id<struct ObservationTag>;
using PictureId = Id<struct PictureTag>;
using GroupId = Id<struct GroupTag>;
using KeptPairId = Id<struct KeptPairTag>;
using MeetingId = Id<struct MeetingTag>;
using ReflectionId = Id<struct ReflectionTag>;
using GoalId = Id<struct GoalTag>;
using DisplayId = Id<struct DisplayTag>;
using PanelId = Id<struct PanelTag>;
using PieceId = Id<struct PieceTag>;
using TranslationId = Id<struct TranslationTag>;
using WallId = Id<struct WallTag>;
using TemplateId = Id<struct TemplateTag>;

} // namespace wainscot
