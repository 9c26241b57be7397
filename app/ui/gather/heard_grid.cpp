#include "app/ui/gather/heard_grid.h"

#include <QPainter>

#include <array>

#include "app/ui/kit/tokens.h"
#include "app/ui/kit/voice_mark.h"

namespace wainscot::ui {

namespace {

constexpr int kTallies = 3;
constexpr int kMostStrokes = 5; // more are a stroke and a number

// Strokes as one tallies on paper; nothing is a word, so that it is not taken for a zero.
void drawTally(QPainter& painter, int number, const QRectF& place)
{
    const Tokens& t = tokens();
    if (number == 0 || number > kMostStrokes) {
        painter.setFont(interfaceFont(0.85));
        painter.setPen(number == 0 ? t.quiet : t.ink);
        painter.drawText(place,
            Qt::AlignCenter,
            number == 0 ? HeardGrid::tr("not yet") : QString::number(number));
        return;
    }
    const double step = scaled(6);
    painter.setPen(QPen(t.ink, 1.6));
    double x = place.center().x() - step * (number - 1) / 2.0;
    for (int i = 0; i < number; ++i, x += step)
        painter.drawLine(
            QPointF(x, place.center().y() - scaled(6)), QPointF(x, place.center().y() + scaled(6)));
}

} // namespace

std::pair<QDate, QDate> termShown(const Book& book, QDate today)
{
    QDate last;
    for (const auto& [id, quote] : book.quotes.rows()) {
        const auto day = dayOf(book, quote);
        if (day && *day <= today && (!last.isValid() || *day > last))
            last = *day;
    }
    const QDate to = !last.isValid() || last >= termBegin(today) ? today : last;
    return {termBegin(to), to};
}

HeardGrid::HeardGrid(Session& session, QObject* parent)
    : QAbstractTableModel(parent)
    , m_session(session)
{
}

void HeardGrid::refresh()
{
    beginResetModel();
    const Book& book = m_session.book();
    const Experience* experience = m_session.experience();
    m_answers = experience != nullptr ? answersIn(book, *experience) : AnswersOfClass();
    const auto [from, to] = termShown(book, m_session.today());
    m_term = termOf(book, from, to);
    endResetModel();
}

int HeardGrid::rowCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : int(m_term.children.size());
}

int HeardGrid::columnCount(const QModelIndex& parent) const
{
    return parent.isValid() ? 0 : prompts() + weeks() + kTallies;
}

HeardGrid::Part HeardGrid::partOf(int column) const
{
    if (column < prompts())
        return Part::Prompt;
    return column < prompts() + weeks() ? Part::Week : Part::Tally;
}

const Child* HeardGrid::child(int row) const
{
    if (row < 0 || row >= rowCount())
        return nullptr;
    return m_session.book().children.find(m_term.children[std::size_t(row)].child);
}

int HeardGrid::tally(int row, int column) const
{
    const ChildInTerm& one = m_term.children[std::size_t(row)];
    const std::array<int, kTallies> tallies{one.quoted, one.pictured, one.walls};
    return tallies[std::size_t(column - prompts() - weeks())];
}

QString HeardGrid::inWordsAt(const QModelIndex& index) const
{
    const std::size_t row = std::size_t(index.row());
    switch (partOf(index.column())) {
    case Part::Prompt:
        return inWords(m_answers.children[row].marks[std::size_t(index.column())]);
    case Part::Week: {
        const auto& heard = m_term.children[row].heard[std::size_t(index.column() - prompts())];
        return heard ? inWords(*heard) : tr("nothing taken down");
    }
    case Part::Tally:
        return QString::number(tally(index.row(), index.column()));
    }
    return {};
}

QVariant HeardGrid::data(const QModelIndex& index, int role) const
{
    const Child* who = child(index.row());
    if (who == nullptr || (role != Qt::AccessibleTextRole && role != Qt::ToolTipRole))
        return {};
    const QString head = headerData(index.column(), Qt::Horizontal).toString();
    const QString column = partOf(index.column()) == Part::Week ? tr("week %1").arg(head) : head;
    return tr("%1, %2: %3").arg(displayName(*who), column, inWordsAt(index));
}

QVariant HeardGrid::headerData(int section, Qt::Orientation orientation, int role) const
{
    if (role != Qt::DisplayRole && role != Qt::AccessibleTextRole)
        return {};
    if (orientation == Qt::Vertical) {
        const Child* who = child(section);
        return who != nullptr ? displayName(*who) : QString();
    }
    switch (partOf(section)) {
    case Part::Prompt:
        return m_answers.prompts[std::size_t(section)].key;
    case Part::Week:
        return QString::number(m_term.weeks[std::size_t(section - prompts())].number());
    case Part::Tally:
        return QStringList{tr("quoted"), tr("pictured"), tr("on a wall")}.at(
            section - prompts() - weeks());
    }
    return {};
}

void HeardGrid::draw(QPainter& painter, const QModelIndex& cell, const QRectF& place) const
{
    const Tokens& t = tokens();
    const std::size_t row = std::size_t(cell.row());
    switch (partOf(cell.column())) {
    case Part::Prompt:
        drawVoiceMark(painter,
            m_answers.children[row].marks[std::size_t(cell.column())],
            place.center(),
            scaled(11),
            t.accent,
            t.edge);
        break;
    case Part::Week: {
        const auto& heard = m_term.children[row].heard[std::size_t(cell.column() - prompts())];
        if (heard) {
            drawVoiceMark(
                painter, {Heard::Answered, *heard}, place.center(), scaled(10), t.quiet, t.edge);
        } else {
            painter.setPen(QPen(t.line, 1.5));
            painter.drawLine(
                place.center() - QPointF(scaled(4), 0), place.center() + QPointF(scaled(4), 0));
        }
        break;
    }
    case Part::Tally:
        drawTally(painter, tally(cell.row(), cell.column()), place);
        break;
    }
}

} // namespace wainscot::ui
