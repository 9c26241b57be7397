#include "app/ui/gather/child_chips.h"

#include <algorithm>

#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr int kAcross = 5;

} // namespace

ChildChips::ChildChips(QWidget* parent)
    : QWidget(parent)
    , m_grid(new QGridLayout(this))
    , m_rover(new Rover(this))
{
    m_grid->setContentsMargins(0, 0, 0, 0);
    m_grid->setSpacing(air(1.5));
}

void ChildChips::setChildren(const Book& book, const std::vector<ChildId>& chosen)
{
    std::vector<ChildId> children;
    children.reserve(book.children.size());
    for (const auto& [id, child] : book.children.rows())
        children.push_back(id);
    const bool same = std::equal(children.begin(),
        children.end(),
        m_chips.begin(),
        m_chips.end(),
        [](ChildId id, const auto& chip) { return id == chip.first; });
    if (!same)
        build(children);
    for (const auto& [id, chip] : m_chips) {
        chip->setText(displayName(*book.children.find(id)));
        chip->setChecked(std::find(chosen.begin(), chosen.end(), id) != chosen.end());
    }
}

void ChildChips::build(const std::vector<ChildId>& children)
{
    m_rover->setMembers({});
    for (const auto& [id, chip] : m_chips) {
        chip->hide();
        chip->deleteLater(); // it may be the sender
    }
    m_chips.clear();
    QVector<QWidget*> stops;
    for (const ChildId id : children) {
        auto* chip = new Button(Button::Form::Chip, QString());
        chip->setCheckable(true);
        chip->setMayShrink(true);
        connect(chip, &Button::clicked, this, [this, id](bool on) { Q_EMIT turned(id, on); });
        const int at = int(m_chips.size());
        m_grid->addWidget(chip, at / kAcross, at % kAcross);
        m_chips.emplace_back(id, chip);
        stops << chip;
    }
    m_rover->setMembers(stops);
}

} // namespace wainscot::ui
