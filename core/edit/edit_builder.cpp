#include "core/edit/edit.h"

#include "core/model/tables.h"

#include <algorithm>

namespace wainscot {

namespace {

template <class T> std::size_t kindOf()
{
    static const std::size_t kind = Change(ValueChange<T>{}).index();
    return kind;
}

} // namespace

EditBuilder::EditBuilder(const Book& book, QString label, int gesture)
    : m_book(book)
{
    m_edit.label = std::move(label);
    m_edit.gesture = gesture;
}

template <class T> decltype(T::id) EditBuilder::newId()
{
    std::int64_t& last = m_lastNumbers[kindOf<T>()];
    last = std::max(last, tableOf<T>(m_book).lastNumber()) + 1;
    return decltype(T::id)(last);
}

template <class T> ValueChange<T>& EditBuilder::changeOf(decltype(T::id) id)
{
    const auto [at, isNew] =
        m_places.emplace(Place{kindOf<T>(), id.number()}, m_edit.changes.size());
    if (isNew) {
        ValueChange<T> change{id, std::nullopt, std::nullopt};
        if (const T* now = tableOf<T>(m_book).find(id)) {
            change.before = *now;
            change.after = *now;
        }
        m_edit.changes.emplace_back(std::move(change));
    }
    return std::get<ValueChange<T>>(m_edit.changes[at->second]);
}

template <class T> void EditBuilder::put(const T& value)
{
    std::int64_t& last = m_lastNumbers[kindOf<T>()];
    last = std::max(last, value.id.number());
    changeOf<T>(value.id).after = value;
}

template <class T> void EditBuilder::remove(decltype(T::id) id)
{
    changeOf<T>(id).after = std::nullopt;
}

void EditBuilder::setInfo(const BookInfo& info)
{
    const std::size_t kind = Change(InfoChange{}).index();
    const auto [at, isNew] = m_places.emplace(Place{kind, 0}, m_edit.changes.size());
    if (isNew)
        m_edit.changes.emplace_back(InfoChange{m_book.info, info});
    else
        std::get<InfoChange>(m_edit.changes[at->second]).after = info;
}

Edit EditBuilder::take()
{
    std::erase_if(m_edit.changes, changesNothing);
    m_places.clear();
    return std::exchange(m_edit, Edit{m_edit.label, m_edit.gesture, {}});
}

#define WAINSCOT_INSTANTIATE(T)                                                                    \
    template decltype(T::id) EditBuilder::newId<T>();                                              \
    template void EditBuilder::put<T>(const T&);                                                   \
    template void EditBuilder::remove<T>(decltype(T::id));

WAINSCOT_INSTANTIATE(Child)
WAINSCOT_INSTANTIATE(PermissionRecord)
WAINSCOT_INSTANTIATE(PromptSet)
WAINSCOT_INSTANTIATE(Experience)
WAINSCOT_INSTANTIATE(Quote)
WAINSCOT_INSTANTIATE(NoAnswer)
WAINSCOT_INSTANTIATE(Observation)
WAINSCOT_INSTANTIATE(Picture)
WAINSCOT_INSTANTIATE(Group)
WAINSCOT_INSTANTIATE(KeptPair)
WAINSCOT_INSTANTIATE(Meeting)
WAINSCOT_INSTANTIATE(Reflection)
WAINSCOT_INSTANTIATE(Goal)
WAINSCOT_INSTANTIATE(Display)
WAINSCOT_INSTANTIATE(Panel)
WAINSCOT_INSTANTIATE(Piece)
WAINSCOT_INSTANTIATE(Wall)
WAINSCOT_INSTANTIATE(Translation)
WAINSCOT_INSTANTIATE(PanelTemplate)

} // namespace wainscot
