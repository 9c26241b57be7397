#include "core/media/heif_references.h"

#include "core/base/says.h"
#include "core/media/bytes.h"

#include <QString>

#include <map>
#include <vector>

namespace wainscot {

namespace {

using Item = std::uint32_t;
using Parts = std::map<Item, std::vector<Item>>;

constexpr qsizetype kBoxHead = 8;
constexpr qsizetype kLongBoxHead = 16;
constexpr qsizetype kVersionAndFlags = 4;

struct Box {
    QByteArrayView type;
    QByteArrayView content;
    qsizetype length = 0; // with its head; 0 = it cannot be, or goes on past the end
};

Box boxAt(const Bytes& bytes, qsizetype at)
{
    Box box;
    box.type = bytes.part(at + 4, 4);
    qsizetype head = kBoxHead;
    qsizetype length = bytes.u32(at);
    if (length == 0) { // to the end of the file
        length = bytes.size() - at;
    } else if (length == 1) {
        head = kLongBoxHead;
        const bool isHuge = bytes.u32(at + kBoxHead) != 0; // more than 4 GiB
        length = isHuge ? 0 : bytes.u32(at + kBoxHead + 4);
    }
    if (length >= head && bytes.has(at, length)) {
        box.length = length;
        box.content = bytes.part(at + head, length - head);
    }
    return box;
}

// One list of references: what each picture of the file is made of.
bool readReferences(QByteArrayView content, Parts& parts)
{
    const Bytes bytes(content);
    const bool wide = bytes.u8(0) > 0; // version 1: items have numbers of 32 bits
    const qsizetype number = wide ? 4 : 2;
    const auto item = [&](qsizetype at) { return wide ? bytes.u32(at) : Item(bytes.u16(at)); };
    qsizetype at = kVersionAndFlags;
    while (at < bytes.size()) {
        if (!bytes.has(at, kBoxHead + number + 2))
            return false;
        const qsizetype length = bytes.u32(at);
        const QByteArrayView type = bytes.part(at + 4, 4);
        const Item from = item(at + kBoxHead);
        const qsizetype count = bytes.u16(at + kBoxHead + number);
        const qsizetype first = at + kBoxHead + number + 2;
        if (length != kBoxHead + number + 2 + count * number || !bytes.has(at, length))
            return false;
        for (qsizetype i = 0; i < count; ++i) {
            const Item to = item(first + i * number);
            if (type == "dimg")
                parts[from].push_back(to);
            else if (type == "auxl") // the picture needs what describes it
                parts[to].push_back(from);
        }
        at += length;
    }
    return true;
}

bool readMeta(QByteArrayView content, Parts& parts)
{
    const Bytes bytes(content);
    for (qsizetype at = kVersionAndFlags; at < bytes.size();) {
        const Box box = boxAt(bytes, at);
        if (box.length == 0 || (box.type == "iref" && !readReferences(box.content, parts)))
            return false;
        at += box.length;
    }
    return true;
}

// Follows the parts as a decoder would.
class Walk {
public:
    explicit Walk(const Parts& parts)
        : m_parts(parts)
    {
    }
    // A picture that is part of itself is deeper than any depth.
    bool endsFrom(Item item, int depth = 0)
    {
        if (depth > kMostDerived || ++m_steps > kMostParts)
            return false;
        const auto found = m_parts.find(item);
        if (found == m_parts.end())
            return true;
        for (const Item part : found->second) {
            if (!endsFrom(part, depth + 1))
                return false;
        }
        return true;
    }

private:
    const Parts& m_parts;
    int m_steps = 0;
};

} // namespace

Result<> checkHeifReferences(QByteArrayView file)
{
    const auto damaged = [](const QString& why) { return Error{ErrorCode::Damaged, {}, why}; };
    Parts parts;
    const Bytes bytes(file);
    for (qsizetype at = 0; at < bytes.size();) {
        const Box box = boxAt(bytes, at);
        if (box.type == "meta" && (box.length == 0 || !readMeta(box.content, parts)))
            return damaged(Says::tr("is damaged: the list of its parts is broken"));
        if (box.length == 0)
            break; // cut short in the pictures themselves: the decoder will say so
        at += box.length;
    }
    Walk walk(parts);
    for (const auto& [item, made] : parts) {
        if (!walk.endsFrom(item))
            return damaged(
                Says::tr("is damaged: a picture in it is made of itself, or of too many"));
    }
    return Done{};
}

} // namespace wainscot
