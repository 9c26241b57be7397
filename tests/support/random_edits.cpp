#include "tests/support/random_edits.h"

#include <QStringList>

namespace wainscot {

namespace {

template <class T> const T& someOf(const Table<T>& table, int number)
{
    auto at = table.rows().begin();
    std::advance(at, number % int(table.size()));
    return at->second;
}

} // namespace

int RandomEdits::number(int from, int to)
{
    return std::uniform_int_distribution<int>(from, to)(m_random);
}

QString RandomEdits::words()
{
    static const QStringList some{QStringLiteral("the sno wuz cold"),
        QStringLiteral(""),
        QStringLiteral("line one\nline two"),
        QStringLiteral("\u5c0f\u96e8\u8bf4"),
        QStringLiteral("\u0645\u0631\u062d\u0628\u0627"),
        QStringLiteral("it's \"big\"; DROP TABLE"),
        QStringLiteral("\U0001F40C slow")};
    return some.at(number(0, int(some.size()) - 1));
}

Edit RandomEdits::next(const Book& book)
{
    EditBuilder edit(book, QStringLiteral("Step"), number(0, 3) == 0 ? number(1, 2) : 0);
    step(edit, book);
    return edit.take();
}

void RandomEdits::step(EditBuilder& edit, const Book& book)
{
    if (book.children.isEmpty() || book.experiences.isEmpty()) {
        addPeople(edit, book);
        addExperience(edit, book);
        return;
    }
    switch (number(0, 9)) {
    case 0:
        addPeople(edit, book);
        break;
    case 1:
        addExperience(edit, book);
        break;
    case 2:
    case 3:
    case 4:
        addToExperience(edit, book);
        break;
    case 5:
    case 6:
        addToWall(edit, book);
        addTranslation(edit, book);
        addTemplate(edit);
        addWall(edit, book);
        break;
    case 7:
        removePiece(edit, book);
        break;
    default:
        change(edit, book);
    }
}

void RandomEdits::addPeople(EditBuilder& edit, const Book& book)
{
    for (int i = number(1, 3); i > 0; --i) {
        Child child;
        child.id = edit.newId<Child>();
        child.name = words() + QString::number(child.id.number());
        child.permissions = Permissions::fromBits(unsigned(number(0, (1 << 20) - 1)));
        if (number(0, 1) == 1)
            child.born = BirthDate{2020, number(1, 12), number(0, 28)};
        child.languages = words();
        edit.put(child);
        addPermissionRecord(edit, child.id);
    }
    BookInfo info = book.info;
    info.title = words();
    edit.setInfo(info);
}

void RandomEdits::addPermissionRecord(EditBuilder& edit, ChildId child)
{
    PermissionRecord record;
    record.id = edit.newId<PermissionRecord>();
    record.child = child;
    record.audience = Audience(number(0, 3));
    for (FamilyAnswer& answer : record.answers)
        answer = FamilyAnswer(number(0, 3));
    if (number(0, 1) == 1)
        record.on = QDate(2025, number(1, 12), number(1, 28));
    record.by = words();
    record.note = words();
    edit.put(record);
}

PromptSetId RandomEdits::addPrompts(EditBuilder& edit, const Book& book)
{
    PromptSet prompts = defaultPromptSet();
    prompts.id = edit.newId<PromptSet>();
    prompts.prompts.resize(std::size_t(number(0, 3)));
    prompts.asked = Asked(number(0, 1));
    prompts.sense = words();
    prompts.ages = words();
    for (Prompt& prompt : prompts.prompts) {
        prompt.sign = PromptSign(number(0, 7));
        for (int i = number(0, 2); i > 0; --i)
            prompt.others.push_back({QStringLiteral("x-%1").arg(i), words()});
        if (!book.pictures.isEmpty() && number(0, 1) == 1)
            prompt.picture = someOf(book.pictures, number(0, 99)).id;
    }
    edit.put(prompts);
    return prompts.id;
}

void RandomEdits::addExperience(EditBuilder& edit, const Book& book)
{
    const PromptSetId prompts = addPrompts(edit, book);
    Experience experience;
    experience.id = edit.newId<Experience>();
    experience.title = words();
    experience.on = QDate(2025, number(1, 12), number(1, 28));
    experience.context = words();
    experience.invitation = words();
    if (number(0, 1) == 1)
        experience.promptSet = prompts;
    if (!book.experiences.isEmpty() && number(0, 1) == 1)
        experience.follows = someOf(book.experiences, number(0, 99)).id;
    edit.put(experience);
}

void RandomEdits::addToExperience(EditBuilder& edit, const Book& book)
{
    const ExperienceId experience = someOf(book.experiences, number(0, 99)).id;
    const ChildId child = someOf(book.children, number(0, 99)).id;
    Quote quote;
    quote.id = edit.newId<Quote>();
    quote.experience = experience;
    quote.child = child;
    quote.words = words();
    quote.firstWords = words();
    quote.telling = Telling(number(0, 4));
    quote.dictation = Dictation(number(0, 1));
    quote.readBack = number(0, 1) == 1;
    quote.stars = number(0, 3);
    if (!book.quotes.isEmpty() && number(0, 1) == 1)
        quote.repliesTo = someOf(book.quotes, number(0, 99)).id;
    if (!book.pictures.isEmpty()) {
        quote.sheet = someOf(book.pictures, number(0, 99)).id;
        quote.drawing = someOf(book.pictures, number(0, 99)).id;
    }
    if (!book.goals.isEmpty())
        quote.goals = {someOf(book.goals, number(0, 99)).id};
    addMeeting(edit, book, quote);
    Observation observation{edit.newId<Observation>(), experience, words(), {child}, {}, {}};
    if (number(0, 1) == 1) {
        observation.at = QDateTime(QDate(2025, 11, 3), QTime(9, 5, 0, 7), Qt::OffsetFromUTC, 3600);
        observation.picture = quote.drawing;
    }
    edit.put(observation);
    NoAnswer missing;
    missing.id = edit.newId<NoAnswer>();
    missing.experience = experience;
    missing.child = child;
    missing.prompt = words();
    missing.why = WhyNoAnswer(number(0, 1));
    missing.note = words();
    missing.by = words();
    edit.put(missing);
    addPicture(edit, book, experience, child);
    addLookingBack(edit, experience);
}

// One in which the words were given, in a group of their own.
void RandomEdits::addMeeting(EditBuilder& edit, const Book& book, Quote quote)
{
    Group group{edit.newId<Group>(), quote.experience, words(), {quote.id}};
    group.keptByHand = number(0, 1) == 1;
    group.order = number(0, 9);
    if (number(0, 1) == 1)
        group.carriedTo = QDate(2025, 11, number(1, 28));
    Meeting meeting;
    meeting.id = edit.newId<Meeting>();
    meeting.experience = quote.experience;
    meeting.on = QDate(2025, 11, 3);
    meeting.notes = words();
    meeting.groups = {group.id};
    meeting.readOut = {quote.id};
    meeting.done = number(0, 1) == 1;
    if (number(0, 1) == 1)
        meeting.carriedOver = {group.id};
    for (int i = number(0, 2); i > 0; --i)
        meeting.happened.push_back({MeetingNoteKind(number(0, 2)), words(), group.id, quote.child});
    if (number(0, 1) == 1)
        quote.meeting = meeting.id;
    edit.put(quote);
    edit.put(group);
    edit.put(meeting);
    if (!book.quotes.isEmpty()) {
        const QuoteId other = someOf(book.quotes, number(0, 99)).id;
        edit.put(KeptPair{edit.newId<KeptPair>(), quote.id, other, number(0, 1) == 1});
    }
}

void RandomEdits::addLookingBack(EditBuilder& edit, ExperienceId experience)
{
    Reflection reflection;
    reflection.id = edit.newId<Reflection>();
    reflection.experience = experience;
    reflection.prompt = words();
    reflection.question = words();
    reflection.answer = words();
    reflection.by = words();
    reflection.on = QDate(2025, 11, number(1, 28));
    reflection.order = number(0, 9);
    edit.put(reflection);
    edit.put(Goal{edit.newId<Goal>(), words(), words(), number(0, 9)});
}

void RandomEdits::addPicture(
    EditBuilder& edit, const Book& book, ExperienceId experience, ChildId child)
{
    Picture picture;
    picture.id = edit.newId<Picture>();
    picture.experience = experience;
    if (number(0, 1) == 1) {
        picture.look = PictureLook{~std::uint64_t(number(0, 99)),
            number(0, 9000),
            number(0, 255),
            number(0, 1000),
            number(0, 1000)};
    }
    picture.kind = PictureKind(number(0, 1));
    picture.sha256 = QString(64, QLatin1Char('a'));
    picture.format = QStringLiteral("jpeg");
    picture.fileName = words();
    picture.size = {4000, 3000};
    picture.orientation = number(1, 8);
    picture.people = People{number(0, 1) == 1, {child}};
    if (number(0, 1) == 1)
        picture.captured = CaptureTime{QDateTime(QDate(2025, 11, 3), QTime(10, 2)), 60};
    if (!book.displays.isEmpty() && number(0, 3) == 3) {
        picture.display = someOf(book.displays, number(0, 99)).id;
        picture.hungOn = QDate(2025, 11, number(1, 28));
        picture.panelsLegible = number(0, 1) == 1;
    }
    if (number(0, 1) == 1)
        picture.mustStay = RectFraction{0.1, 1.0 / 3, 0.25, 0.5};
    if (number(0, 1) == 1) {
        picture.treatment.covered = {
            {{0.1, 0.2, 1.0 / 3, 0.4}, Cover(number(0, 2)), number(0, 1) == 1}};
        picture.treatment.evenLight = number(0, 1) == 1;
        if (number(0, 1) == 1) {
            const Corners corners{{{0.1, 0.1}, {0.9, 1.0 / 7}, {0.8, 0.9}, {0.2, 0.8}}};
            picture.treatment.straightening = Straightening{corners, {4000, 3000}};
        }
    }
    edit.put(picture);
}

void RandomEdits::addToWall(EditBuilder& edit, const Book& book)
{
    Display display;
    display.id = edit.newId<Display>();
    display.experience = someOf(book.experiences, number(0, 99)).id;
    display.name = words();
    display.audience = Audience(number(0, 3));
    display.panelSize = {inches(24), inches(36)};
    display.voiceStep = number(0, 3);
    edit.put(display);
    Panel panel{edit.newId<Panel>(), display.id, 1};
    if (!book.goals.isEmpty())
        panel.goals = {someOf(book.goals, number(0, 99)).id};
    edit.put(panel);
    for (int i = number(0, 3); i > 0; --i) {
        Piece piece;
        piece.id = edit.newId<Piece>();
        piece.panel = panel.id;
        piece.kind = PieceKind(number(0, 10));
        if (!book.quotes.isEmpty())
            piece.quote = someOf(book.quotes, number(0, 99)).id;
        if (!book.pictures.isEmpty())
            piece.picture = someOf(book.pictures, number(0, 99)).id;
        piece.text = words();
        piece.secondLanguage = words();
        piece.cell = {Mm(number(0, 100) / 3.0), Mm(10), Mm(100.1), Mm(50)};
        piece.framing = {{0.3, 0.7}, 1.5};
        piece.shownWords = words();
        piece.pairing = words();
        piece.palette = words();
        edit.put(piece);
    }
}

void RandomEdits::addTranslation(EditBuilder& edit, const Book& book)
{
    Translation translation;
    translation.id = edit.newId<Translation>();
    translation.experience = someOf(book.experiences, number(0, 99)).id;
    translation.what = Translated(number(0, 6));
    if (!book.quotes.isEmpty())
        translation.quote = someOf(book.quotes, number(0, 99)).id;
    translation.language = QStringLiteral("ar");
    translation.text = words();
    edit.put(translation);
}

void RandomEdits::addWall(EditBuilder& edit, const Book& book)
{
    Wall wall;
    wall.id = edit.newId<Wall>();
    wall.name = words();
    wall.size = {Mm(number(500, 9000)), Mm(number(500, 4000))};
    for (int i = number(0, 3); i > 0; --i)
        wall.fittings.push_back({FittingKind(number(0, 7)),
            {Mm(number(0, 900) / 7.0), Mm(number(0, 900)), Mm(100), Mm(number(10, 300))}});
    if (!book.panels.isEmpty()) {
        Panel panel = someOf(book.panels, number(0, 99));
        wall.panels.push_back({panel.id, {Mm(number(0, 900) / 3.0), Mm(number(0, 900))}});
        panel.left = {{words(), PieceId(number(0, 3)), words()}};
        if (!panel.left.front().rule.isEmpty())
            edit.put(panel);
    }
    wall.viewers = Viewers(number(0, 2));
    wall.youngest = number(3, 6);
    wall.oldest = number(6, 12);
    edit.put(wall);
}

void RandomEdits::addTemplate(EditBuilder& edit)
{
    PanelTemplate made;
    made.id = edit.newId<PanelTemplate>();
    made.name = QStringLiteral("Wall %1").arg(made.id.number());
    made.panelSize = {inches(24), inches(36)};
    made.voiceStep = number(1, 3);
    for (int i = number(1, 4); i > 0; --i) {
        TemplateSlot slot;
        slot.kind = PieceKind(number(0, 10));
        slot.column = number(-1, 6);
        slot.columns = number(1, 6);
        slot.rows = number(0, 1000) / 3000.0;
        slot.optional = number(0, 1) == 1;
        made.places.push_back(slot);
    }
    edit.put(made);
}

void RandomEdits::change(EditBuilder& edit, const Book& book)
{
    if (!book.quotes.isEmpty()) {
        Quote quote = someOf(book.quotes, number(0, 99));
        quote.words = words();
        edit.put(quote);
    }
    if (!book.pieces.isEmpty()) {
        Piece piece = someOf(book.pieces, number(0, 99));
        piece.cell = piece.cell.movedBy(Mm(number(-2, 2)), Mm(0));
        piece.pinned = number(0, 1) == 1;
        piece.size = number(-2, 2);
        piece.together = number(0, 3);
        piece.startsPanel = number(0, 1) == 1;
        edit.put(piece);
    }
    if (!book.panels.isEmpty()) {
        Panel panel = someOf(book.panels, number(0, 99));
        panel.locked = number(0, 1) == 1;
        edit.put(panel);
    }
    Child child = someOf(book.children, number(0, 99));
    child.shownAs = words();
    edit.put(child);
}

void RandomEdits::removePiece(EditBuilder& edit, const Book& book)
{
    if (!book.pieces.isEmpty())
        edit.remove<Piece>(someOf(book.pieces, number(0, 99)).id);
    if (!book.observations.isEmpty())
        edit.remove<Observation>(someOf(book.observations, number(0, 99)).id);
    if (!book.meetings.isEmpty()) {
        Meeting meeting = someOf(book.meetings, number(0, 99));
        meeting.groups.clear();
        meeting.carriedOver.clear();
        meeting.happened.clear();
        edit.put(meeting);
    }
}

} // namespace wainscot
