#include "app/ui/gather/picture_list.h"

#include <QPainter>
#include <QStyledItemDelegate>

#include "app/ui/kit/icons.h"
#include "app/ui/kit/tokens.h"

namespace wainscot::ui {

namespace {

constexpr int kIdRole = Qt::UserRole;
constexpr int kLookedRole = Qt::UserRole + 1;

class PictureDelegate : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;
    [[nodiscard]] QSize sizeHint(
        const QStyleOptionViewItem& /*option*/, const QModelIndex& /*index*/) const override
    {
        return {scaled(200), scaled(68)};
    }
    void paint(QPainter* painter,
        const QStyleOptionViewItem& option,
        const QModelIndex& index) const override
    {
        const Tokens& t = tokens();
        painter->save();
        painter->setRenderHints(QPainter::Antialiasing | QPainter::SmoothPixmapTransform);
        const QRect box = option.rect.adjusted(1, 1, -1, -1);
        if (option.state.testFlag(QStyle::State_Selected)) {
            painter->setPen(QPen(t.accent, 1));
            painter->setBrush(t.accentTint);
            painter->drawRoundedRect(QRectF(box).adjusted(0.5, 0.5, -0.5, -0.5), 3, 3);
        }
        const QRect frame(
            box.left() + air(1.5), box.top() + air(1), scaled(78), box.height() - air(2));
        painter->fillRect(frame, t.line);
        const auto pixmap = index.data(Qt::DecorationRole).value<QPixmap>();
        if (!pixmap.isNull()) {
            QRect place(QPoint(), pixmap.size().scaled(frame.size(), Qt::KeepAspectRatio));
            place.moveCenter(frame.center());
            painter->drawPixmap(place, pixmap);
        }
        const bool looked = index.data(kLookedRole).toBool();
        painter->setFont(interfaceFont(0.95));
        painter->setPen(looked ? t.ink : t.look);
        const QRect text = box.adjusted(scaled(78) + air(4), air(1), -air(1), -air(1));
        painter->drawText(text,
            int(Qt::AlignLeading | Qt::AlignVCenter) | Qt::TextWordWrap,
            index.data(Qt::DisplayRole).toString());
        if (option.state.testFlag(QStyle::State_HasFocus))
            drawFocusRing(*painter, box);
        painter->restore();
    }
};

} // namespace

QString whoIsIn(const Book& book, const Picture& picture)
{
    if (!picture.people.lookedAt)
        return PictureList::tr("not looked at yet");
    QStringList names;
    for (const ChildId id : picture.people.children) {
        if (const Child* child = book.children.find(id))
            names << displayName(*child);
    }
    return names.isEmpty() ? PictureList::tr("nobody to recognise")
                           : names.join(QStringLiteral(", "));
}

PictureList::PictureList(PictureShelf& shelf, QWidget* parent)
    : QListWidget(parent)
    , m_shelf(shelf)
{
    setFrameShape(QFrame::NoFrame);
    setItemDelegate(new PictureDelegate(this));
    setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setTabKeyNavigation(false); // one stop
    setAccessibleName(tr("Pictures"));
    setSpacing(1);
    viewport()->setAutoFillBackground(false);
    connect(this, &QListWidget::currentRowChanged, this, [this] {
        if (!m_refreshing && current().isValid())
            Q_EMIT chosen(current());
    });
}

PictureId PictureList::current() const
{
    const QListWidgetItem* item = currentItem();
    return item != nullptr ? PictureId(item->data(kIdRole).toLongLong()) : PictureId();
}

void PictureList::showThumbnail(QListWidgetItem& item, const Picture& picture)
{
    const QImage image = m_shelf.thumbnail(picture);
    if (!image.isNull())
        item.setData(Qt::DecorationRole,
            QPixmap::fromImage(image.scaled(
                scaled(156), scaled(124), Qt::KeepAspectRatio, Qt::SmoothTransformation)));
}

void PictureList::refresh(
    const Book& book, const std::vector<const Picture*>& pictures, PictureId chosenOne)
{
    m_refreshing = true;
    std::vector<PictureId> ids;
    ids.reserve(pictures.size());
    for (const Picture* picture : pictures)
        ids.push_back(picture->id);
    if (ids != m_shown) {
        clear();
        m_shown = ids;
        for (const PictureId id : ids) {
            auto* item = new QListWidgetItem(this);
            item->setData(kIdRole, qlonglong(id.number()));
        }
    }
    for (int i = 0; i < count(); ++i) {
        const Picture& picture = *pictures[std::size_t(i)];
        const QString who = whoIsIn(book, picture);
        item(i)->setText(who);
        item(i)->setData(kLookedRole, picture.people.lookedAt);
        item(i)->setToolTip(picture.fileName);
        item(i)->setData(Qt::AccessibleTextRole,
            (picture.caption.isEmpty() ? picture.fileName : picture.caption) + QStringLiteral(": ")
                + who);
        showThumbnail(*item(i), picture);
        if (picture.id == chosenOne)
            setCurrentRow(i);
    }
    m_refreshing = false;
}

} // namespace wainscot::ui
