#include "core/model/kind_words.h"

#include "core/base/says.h"

namespace wainscot {

QString inSentence(PieceKind kind)
{
    switch (kind) {
    case PieceKind::Title:
        return Says::tr("the title");
    case PieceKind::Question:
        return Says::tr("the question");
    case PieceKind::Context:
        return Says::tr("the context");
    case PieceKind::Label:
        return Says::tr("the label");
    case PieceKind::Photo:
        return Says::tr("the photo");
    case PieceKind::Work:
        return Says::tr("the work");
    case PieceKind::Quote:
        return Says::tr("the quote");
    case PieceKind::Interpretation:
        return Says::tr("the interpretation");
    case PieceKind::NextStep:
        return Says::tr("the next step");
    case PieceKind::Invitation:
        return Says::tr("the invitation");
    case PieceKind::Credits:
        return Says::tr("the credits");
    }
    return {};
}

} // namespace wainscot
