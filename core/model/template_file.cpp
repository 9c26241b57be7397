#include "core/model/template_file.h"

#include "core/base/commit_file.h"

#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QSaveFile>

#include <cmath>

namespace wainscot {

namespace {

constexpr int kForm = 1;
constexpr qint64 kLargestFile = 256 * 1024;
constexpr double kLargestSideMm = 5000;

// Reads the fields of one object; the first that makes no sense is remembered with its cause.
class Fields {
public:
    Fields(const QJsonObject& object, QString at, QString& fault)
        : m_object(object)
        , m_at(std::move(at))
        , m_fault(fault)
    {
    }

    QString text(const char* name, const QString& otherwise)
    {
        const QJsonValue value = take(name);
        if (value.isUndefined())
            return otherwise;
        if (!value.isString())
            blame(name, QStringLiteral("is no text"));
        return value.toString();
    }

    int whole(const char* name, int least, int most, int otherwise)
    {
        const double value = number(name, least, most, otherwise);
        if (value != std::floor(value))
            blame(name, QStringLiteral("%1 is no whole number").arg(value));
        return static_cast<int>(value);
    }

    double number(const char* name, double least, double most, double otherwise)
    {
        const QJsonValue value = take(name);
        if (value.isUndefined())
            return otherwise;
        if (!value.isDouble()) {
            blame(name, QStringLiteral("is no number"));
            return otherwise;
        }
        const double found = value.toDouble();
        if (!(found >= least && found <= most)) {
            blame(name, QStringLiteral("%1 is not %2 to %3").arg(found).arg(least).arg(most));
            return otherwise;
        }
        return found;
    }

    bool yes(const char* name)
    {
        const QJsonValue value = take(name);
        if (!value.isUndefined() && !value.isBool())
            blame(name, QStringLiteral("is neither true nor false"));
        return value.toBool();
    }

    QJsonValue take(const char* name)
    {
        m_known.append(QString::fromLatin1(name));
        return m_object.value(QLatin1String(name));
    }

    void blame(const char* name, const QString& why)
    {
        if (m_fault.isEmpty())
            m_fault = QStringLiteral("%1%2: %3").arg(m_at, QLatin1String(name), why);
    }

    void blameStrangers()
    {
        for (const QString& name : m_object.keys()) {
            if (!m_known.contains(name))
                blame(name.toUtf8().constData(), QStringLiteral("there is no such field"));
        }
    }

private:
    const QJsonObject m_object;
    QString m_at;
    QString& m_fault;
    QStringList m_known;
};

QJsonObject toJson(const TemplateSlot& slot)
{
    QJsonObject object{{QStringLiteral("kind"), nameOf(slot.kind)}};
    if (slot.group > 0)
        object[QStringLiteral("group")] = slot.group;
    if (slot.column >= 0)
        object[QStringLiteral("column")] = slot.column;
    if (slot.columns > 0)
        object[QStringLiteral("columns")] = slot.columns;
    if (slot.rows > 0)
        object[QStringLiteral("rows")] = slot.rows;
    if (slot.area > 0)
        object[QStringLiteral("area")] = slot.area;
    for (const auto& [name, said] : {std::pair("dominant", slot.dominant),
             std::pair("optional", slot.optional),
             std::pair("fixed", slot.fixed)}) {
        if (said)
            object[QLatin1String(name)] = true;
    }
    if (slot.fixed)
        object[QStringLiteral("top")] = slot.top;
    return object;
}

TemplateSlot slotFrom(const QJsonValue& value, int number, QString& fault)
{
    const QString at = QStringLiteral("places[%1].").arg(number);
    Fields fields(value.toObject(), at, fault);
    TemplateSlot slot;
    const QString kind = fields.text("kind", {});
    if (const auto known = pieceKindFromName(kind))
        slot.kind = *known;
    else
        fields.blame("kind", QStringLiteral("\"%1\" is no kind of piece").arg(kind));
    slot.group = fields.whole("group", 0, kMostSlots, 0);
    slot.column = fields.whole("column", 0, kTemplateColumns - 1, -1);
    slot.columns = fields.whole("columns", 1, kTemplateColumns, 0);
    slot.rows = fields.number("rows", 0, 1, 0);
    slot.area = fields.number("area", 0, 1, 0);
    slot.dominant = fields.yes("dominant");
    slot.optional = fields.yes("optional");
    slot.fixed = fields.yes("fixed");
    slot.top = fields.number("top", 0, 1, 0);
    fields.blameStrangers();
    if (std::max(0, slot.column) + slot.columns > kTemplateColumns)
        fields.blame("columns", QStringLiteral("it runs past the last of 12 columns"));
    if (slot.fixed && (slot.column < 0 || slot.columns == 0 || slot.rows <= 0))
        fields.blame("fixed", QStringLiteral("a fixed piece needs column, columns and rows"));
    if (slot.fixed && slot.top + slot.rows > 1.001)
        fields.blame("rows", QStringLiteral("it runs past the foot of the panel"));
    if (slot.area > 0 && !isPicture(slot.kind))
        fields.blame("area", QStringLiteral("only pictures have one"));
    return slot;
}

// What only the whole tells: fixed places over each other, two large pictures.
QString faultIn(const PanelTemplate& made)
{
    int dominant = 0;
    for (std::size_t a = 0; a < made.places.size(); ++a) {
        const TemplateSlot& one = made.places[a];
        dominant += one.dominant ? 1 : 0;
        for (std::size_t b = a + 1; one.fixed && b < made.places.size(); ++b) {
            const TemplateSlot& other = made.places[b];
            const bool across = one.column < other.column + other.columns
                && other.column < one.column + one.columns;
            const bool down =
                one.top < other.top + other.rows - 1e-9 && other.top < one.top + one.rows - 1e-9;
            if (other.fixed && across && down)
                return QStringLiteral("places[%1]: it lies over places[%2]").arg(b).arg(a);
        }
    }
    return dominant > 1
        ? QStringLiteral("places: %1 pictures are dominant, one may be").arg(dominant)
        : QString();
}

PanelTemplate templateFrom(const QJsonObject& object, QString& fault)
{
    Fields fields(object, {}, fault);
    PanelTemplate made;
    fields.take("wainscot_template"); // looked at before
    made.name = fields.text("name", {}).simplified();
    if (made.name.isEmpty())
        fields.blame("name", QStringLiteral("a template needs a name"));
    made.panelSize.width = Mm(fields.number("panel_width_mm", 50, kLargestSideMm, 841));
    made.panelSize.height = Mm(fields.number("panel_height_mm", 50, kLargestSideMm, 594));
    made.pairing = fields.text("pairing", made.pairing);
    made.palette = fields.text("palette", made.palette);
    made.voiceStep = fields.whole("voice_step", 1, 3, made.voiceStep);
    const QJsonValue places = fields.take("places");
    if (!places.isArray() || places.toArray().isEmpty())
        fields.blame("places", QStringLiteral("a template needs at least one place"));
    if (places.toArray().size() > kMostSlots)
        fields.blame("places", QStringLiteral("more than %1").arg(kMostSlots));
    int number = 0;
    const QJsonArray list = places.toArray();
    for (const auto& place : list) {
        if (!fault.isEmpty())
            break;
        if (!place.isObject())
            fields.blame("places", QStringLiteral("place %1 is no object").arg(number));
        made.places.push_back(slotFrom(place, number++, fault));
    }
    fields.blameStrangers();
    if (fault.isEmpty())
        fault = faultIn(made);
    return made;
}

} // namespace

QByteArray templateToJson(const PanelTemplate& made)
{
    QJsonArray places;
    for (const TemplateSlot& slot : made.places)
        places.append(toJson(slot));
    const QJsonObject object{{QStringLiteral("wainscot_template"), kForm},
        {QStringLiteral("name"), made.name},
        {QStringLiteral("panel_width_mm"), made.panelSize.width.value()},
        {QStringLiteral("panel_height_mm"), made.panelSize.height.value()},
        {QStringLiteral("pairing"), made.pairing},
        {QStringLiteral("palette"), made.palette},
        {QStringLiteral("voice_step"), made.voiceStep},
        {QStringLiteral("places"), places}};
    return QJsonDocument(object).toJson(QJsonDocument::Indented);
}

Result<PanelTemplate> templateFromJson(const QByteArray& json, const QString& source)
{
    QJsonParseError parsed;
    const QJsonDocument document = QJsonDocument::fromJson(json, &parsed);
    if (parsed.error != QJsonParseError::NoError) {
        return Error{ErrorCode::Damaged,
            source,
            QStringLiteral("byte %1: %2").arg(parsed.offset).arg(parsed.errorString())};
    }
    const QJsonValue form = document.object().value(QLatin1String("wainscot_template"));
    if (!form.isDouble()) {
        return Error{ErrorCode::Damaged,
            source,
            QStringLiteral("wainscot_template: it does not say that it is a template")};
    }
    if (form.toInt() > kForm)
        return Error{ErrorCode::TooNew, source, {}};
    QString fault;
    PanelTemplate made = templateFrom(document.object(), fault);
    if (!fault.isEmpty())
        return Error{ErrorCode::Damaged, source, fault};
    return made;
}

Result<PanelTemplate> readTemplate(const QString& path)
{
    QFile file(path);
    if (!file.exists())
        return Error{ErrorCode::NotFound, path, {}};
    if (!file.open(QIODevice::ReadOnly))
        return Error{ErrorCode::CannotRead, path, file.errorString()};
    if (file.size() > kLargestFile)
        return Error{ErrorCode::Damaged, path, QStringLiteral("it is too large for a template")};
    return templateFromJson(file.readAll(), path);
}

Result<> writeTemplate(const QString& path, const PanelTemplate& made)
{
    QSaveFile file(path);
    const QByteArray json = templateToJson(made);
    if (!file.open(QIODevice::WriteOnly) || file.write(json) != json.size() || !commitWhole(file))
        return Error{ErrorCode::CannotWrite, path, file.errorString()};
    return Done{};
}

} // namespace wainscot
