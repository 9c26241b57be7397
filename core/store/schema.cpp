#include "core/store/schema.h"

#include "core/store/database.h"

#include <QStringList>

namespace wainscot {

namespace {

// Only SQL that PostgreSQL understands too. Units stand in the names; enumerations are written by
// name; foreign keys are looked at when a unit of work ends, so its steps may come in any order.
// A released step is never changed: a new one is added.
const char* const kVersion1 = R"(
CREATE TABLE book (
  id BIGINT PRIMARY KEY CHECK (id = 1), title TEXT NOT NULL, language TEXT NOT NULL);

CREATE TABLE children (
  id BIGINT PRIMARY KEY, name TEXT NOT NULL, shown_as TEXT NOT NULL, born TEXT,
  permissions BIGINT NOT NULL);

CREATE TABLE prompt_sets (id BIGINT PRIMARY KEY, name TEXT NOT NULL, language TEXT NOT NULL);
CREATE TABLE prompts (
  prompt_set_id BIGINT NOT NULL REFERENCES prompt_sets ON DELETE CASCADE,
  place INTEGER NOT NULL, prompt_key TEXT NOT NULL, asked TEXT NOT NULL,
  PRIMARY KEY (prompt_set_id, place));

CREATE TABLE experiences (
  id BIGINT PRIMARY KEY, title TEXT NOT NULL, happened_on TEXT, place TEXT NOT NULL,
  materials TEXT NOT NULL, sense TEXT NOT NULL, goals TEXT NOT NULL, context TEXT NOT NULL,
  interpretation TEXT NOT NULL, next_steps TEXT NOT NULL, credits TEXT NOT NULL,
  language TEXT NOT NULL,
  prompt_set_id BIGINT REFERENCES prompt_sets DEFERRABLE INITIALLY DEFERRED);

CREATE TABLE meetings (
  id BIGINT PRIMARY KEY,
  experience_id BIGINT NOT NULL REFERENCES experiences DEFERRABLE INITIALLY DEFERRED,
  met_on TEXT, notes TEXT NOT NULL);

CREATE TABLE quotes (
  id BIGINT PRIMARY KEY,
  experience_id BIGINT NOT NULL REFERENCES experiences DEFERRABLE INITIALLY DEFERRED,
  child_id BIGINT NOT NULL REFERENCES children DEFERRABLE INITIALLY DEFERRED,
  prompt_key TEXT NOT NULL,
  meeting_id BIGINT REFERENCES meetings DEFERRABLE INITIALLY DEFERRED,
  words TEXT NOT NULL, language TEXT NOT NULL, telling TEXT NOT NULL, dictation TEXT NOT NULL,
  is_read_back SMALLINT NOT NULL CHECK (is_read_back IN (0, 1)), scribe TEXT NOT NULL,
  said_on TEXT, stars INTEGER NOT NULL CHECK (stars BETWEEN 0 AND 3));

CREATE TABLE response_groups (
  id BIGINT PRIMARY KEY,
  experience_id BIGINT NOT NULL REFERENCES experiences DEFERRABLE INITIALLY DEFERRED,
  label TEXT NOT NULL);
CREATE TABLE group_quotes (
  group_id BIGINT NOT NULL REFERENCES response_groups ON DELETE CASCADE, place INTEGER NOT NULL,
  quote_id BIGINT NOT NULL REFERENCES quotes DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (group_id, place));
CREATE TABLE meeting_groups (
  meeting_id BIGINT NOT NULL REFERENCES meetings ON DELETE CASCADE, place INTEGER NOT NULL,
  group_id BIGINT NOT NULL REFERENCES response_groups DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (meeting_id, place));

CREATE TABLE observations (
  id BIGINT PRIMARY KEY,
  experience_id BIGINT NOT NULL REFERENCES experiences DEFERRABLE INITIALLY DEFERRED,
  words TEXT NOT NULL, seen_at TEXT);
CREATE TABLE observation_children (
  observation_id BIGINT NOT NULL REFERENCES observations ON DELETE CASCADE,
  place INTEGER NOT NULL,
  child_id BIGINT NOT NULL REFERENCES children DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (observation_id, place));

CREATE TABLE pictures (
  id BIGINT PRIMARY KEY,
  experience_id BIGINT NOT NULL REFERENCES experiences DEFERRABLE INITIALLY DEFERRED,
  kind TEXT NOT NULL, sha256 TEXT NOT NULL, format TEXT NOT NULL, file_name TEXT NOT NULL,
  width_px INTEGER NOT NULL, height_px INTEGER NOT NULL,
  orientation INTEGER NOT NULL CHECK (orientation BETWEEN 1 AND 8),
  captured_local TEXT, captured_offset_minutes INTEGER, caption TEXT NOT NULL,
  is_looked_at SMALLINT NOT NULL CHECK (is_looked_at IN (0, 1)), taken_by TEXT NOT NULL,
  stay_x DOUBLE PRECISION, stay_y DOUBLE PRECISION, stay_width DOUBLE PRECISION,
  stay_height DOUBLE PRECISION, stars INTEGER NOT NULL CHECK (stars BETWEEN 0 AND 3));
CREATE TABLE picture_children (
  picture_id BIGINT NOT NULL REFERENCES pictures ON DELETE CASCADE, place INTEGER NOT NULL,
  child_id BIGINT NOT NULL REFERENCES children DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (picture_id, place));

CREATE TABLE displays (
  id BIGINT PRIMARY KEY,
  experience_id BIGINT REFERENCES experiences DEFERRABLE INITIALLY DEFERRED,
  name TEXT NOT NULL, audience TEXT NOT NULL, panel_width_mm DOUBLE PRECISION NOT NULL,
  panel_height_mm DOUBLE PRECISION NOT NULL, reading_distance_mm DOUBLE PRECISION NOT NULL,
  pairing TEXT NOT NULL, palette TEXT NOT NULL, plan TEXT NOT NULL, language TEXT NOT NULL);

CREATE TABLE panels (
  id BIGINT PRIMARY KEY,
  display_id BIGINT NOT NULL REFERENCES displays DEFERRABLE INITIALLY DEFERRED,
  number INTEGER NOT NULL CHECK (number >= 1));

CREATE TABLE pieces (
  id BIGINT PRIMARY KEY,
  panel_id BIGINT NOT NULL REFERENCES panels DEFERRABLE INITIALLY DEFERRED,
  kind TEXT NOT NULL, quote_id BIGINT REFERENCES quotes DEFERRABLE INITIALLY DEFERRED,
  picture_id BIGINT REFERENCES pictures DEFERRABLE INITIALLY DEFERRED,
  heading TEXT NOT NULL, words TEXT NOT NULL, language TEXT NOT NULL,
  group_number INTEGER NOT NULL, reading_order INTEGER NOT NULL,
  is_dominant SMALLINT NOT NULL CHECK (is_dominant IN (0, 1)),
  x_mm DOUBLE PRECISION NOT NULL, y_mm DOUBLE PRECISION NOT NULL,
  width_mm DOUBLE PRECISION NOT NULL, height_mm DOUBLE PRECISION NOT NULL,
  picture_x_mm DOUBLE PRECISION NOT NULL, picture_y_mm DOUBLE PRECISION NOT NULL,
  picture_width_mm DOUBLE PRECISION NOT NULL, picture_height_mm DOUBLE PRECISION NOT NULL,
  is_pinned SMALLINT NOT NULL CHECK (is_pinned IN (0, 1)),
  focus_x DOUBLE PRECISION NOT NULL, focus_y DOUBLE PRECISION NOT NULL,
  zoom DOUBLE PRECISION NOT NULL CHECK (zoom > 0));
)";

// Numbers handed out once stay used, also when their row is gone after the book was closed.
const char* const kVersion2 = R"(
CREATE TABLE counters (kind TEXT PRIMARY KEY, last_number BIGINT NOT NULL);
INSERT INTO counters SELECT 'children', COALESCE(MAX(id), 0) FROM children;
INSERT INTO counters SELECT 'prompt_sets', COALESCE(MAX(id), 0) FROM prompt_sets;
INSERT INTO counters SELECT 'experiences', COALESCE(MAX(id), 0) FROM experiences;
INSERT INTO counters SELECT 'meetings', COALESCE(MAX(id), 0) FROM meetings;
INSERT INTO counters SELECT 'quotes', COALESCE(MAX(id), 0) FROM quotes;
INSERT INTO counters SELECT 'response_groups', COALESCE(MAX(id), 0) FROM response_groups;
INSERT INTO counters SELECT 'observations', COALESCE(MAX(id), 0) FROM observations;
INSERT INTO counters SELECT 'pictures', COALESCE(MAX(id), 0) FROM pictures;
INSERT INTO counters SELECT 'displays', COALESCE(MAX(id), 0) FROM displays;
INSERT INTO counters SELECT 'panels', COALESCE(MAX(id), 0) FROM panels;
INSERT INTO counters SELECT 'pieces', COALESCE(MAX(id), 0) FROM pieces;
CREATE INDEX quotes_by_experience ON quotes (experience_id);
CREATE INDEX quotes_by_child ON quotes (child_id);
CREATE INDEX pictures_by_experience ON pictures (experience_id);
CREATE INDEX panels_by_display ON panels (display_id);
CREATE INDEX pieces_by_panel ON pieces (panel_id);
CREATE INDEX pieces_by_quote ON pieces (quote_id);
CREATE INDEX pieces_by_picture ON pieces (picture_id);
)";

// Two languages on a panel, children's words larger than a plan sets them, a teacher's own
// templates.
const char* const kVersion3 = R"(
ALTER TABLE experiences ADD COLUMN invitation TEXT NOT NULL DEFAULT '';
ALTER TABLE displays ADD COLUMN voice_step INTEGER NOT NULL DEFAULT 0;
ALTER TABLE pieces ADD COLUMN second_language TEXT NOT NULL DEFAULT '';
CREATE TABLE translations (
  id BIGINT PRIMARY KEY,
  experience_id BIGINT NOT NULL REFERENCES experiences DEFERRABLE INITIALLY DEFERRED,
  what TEXT NOT NULL, quote_id BIGINT REFERENCES quotes DEFERRABLE INITIALLY DEFERRED,
  picture_id BIGINT REFERENCES pictures DEFERRABLE INITIALLY DEFERRED,
  language TEXT NOT NULL, words TEXT NOT NULL);
CREATE TABLE templates (id BIGINT PRIMARY KEY, form TEXT NOT NULL);
CREATE INDEX translations_by_experience ON translations (experience_id);
CREATE INDEX translations_by_quote ON translations (quote_id);
CREATE INDEX translations_by_picture ON translations (picture_id);
)";

// Pictures are treated by recipe, words shown in part, one piece may have a style of its own.
const char* const kVersion4 = R"(
ALTER TABLE pictures ADD COLUMN treatment TEXT NOT NULL DEFAULT '';
ALTER TABLE pieces ADD COLUMN shown_words TEXT NOT NULL DEFAULT '';
ALTER TABLE pieces ADD COLUMN pairing TEXT NOT NULL DEFAULT '';
ALTER TABLE pieces ADD COLUMN palette TEXT NOT NULL DEFAULT '';
)";

// What a teacher asks of an arrangement.
const char* const kVersion5 = R"(
ALTER TABLE panels ADD COLUMN is_locked SMALLINT NOT NULL DEFAULT 0 CHECK (is_locked IN (0, 1));
ALTER TABLE pieces ADD COLUMN size_wish INTEGER NOT NULL DEFAULT 0
  CHECK (size_wish BETWEEN -2 AND 2);
ALTER TABLE pieces ADD COLUMN together_number INTEGER NOT NULL DEFAULT 0;
ALTER TABLE pieces ADD COLUMN starts_panel SMALLINT NOT NULL DEFAULT 0
  CHECK (starts_panel IN (0, 1));
)";

// What a small copy of a picture tells, for bursts of near-equal ones.
const char* const kVersion6 = R"(
ALTER TABLE pictures ADD COLUMN look_hash TEXT;
ALTER TABLE pictures ADD COLUMN look_sharpness INTEGER;
ALTER TABLE pictures ADD COLUMN look_lightness INTEGER;
ALTER TABLE pictures ADD COLUMN look_dark_permille INTEGER;
ALTER TABLE pictures ADD COLUMN look_bright_permille INTEGER;
)";

// Who said what about permissions; how words came about and why some are missing; questions in
// several languages; meetings and looking back.
const char* const kVersion7 = R"(
ALTER TABLE children ADD COLUMN languages TEXT NOT NULL DEFAULT '';
CREATE TABLE permission_records (
  id BIGINT PRIMARY KEY,
  child_id BIGINT NOT NULL REFERENCES children DEFERRABLE INITIALLY DEFERRED,
  audience TEXT NOT NULL, photo TEXT NOT NULL, first_name TEXT NOT NULL, words TEXT NOT NULL,
  work TEXT NOT NULL, photo_with_name TEXT NOT NULL, said_on TEXT, said_by TEXT NOT NULL,
  note TEXT NOT NULL);
ALTER TABLE prompt_sets ADD COLUMN asked TEXT NOT NULL DEFAULT 'children';
ALTER TABLE prompt_sets ADD COLUMN sense TEXT NOT NULL DEFAULT '';
ALTER TABLE prompt_sets ADD COLUMN ages TEXT NOT NULL DEFAULT '';
ALTER TABLE prompts ADD COLUMN sign TEXT NOT NULL DEFAULT '';
ALTER TABLE prompts ADD COLUMN picture_id BIGINT REFERENCES pictures
  DEFERRABLE INITIALLY DEFERRED;
CREATE TABLE prompt_wordings (
  prompt_set_id BIGINT NOT NULL REFERENCES prompt_sets ON DELETE CASCADE,
  prompt_key TEXT NOT NULL, place INTEGER NOT NULL, language TEXT NOT NULL,
  asked TEXT NOT NULL, PRIMARY KEY (prompt_set_id, prompt_key, place));
ALTER TABLE experiences ADD COLUMN follows_id BIGINT REFERENCES experiences
  DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE quotes ADD COLUMN first_words TEXT NOT NULL DEFAULT '';
ALTER TABLE quotes ADD COLUMN sheet_picture_id BIGINT REFERENCES pictures
  DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE quotes ADD COLUMN drawing_picture_id BIGINT REFERENCES pictures
  DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE quotes ADD COLUMN replies_to_id BIGINT REFERENCES quotes
  DEFERRABLE INITIALLY DEFERRED;
CREATE TABLE no_answers (
  id BIGINT PRIMARY KEY,
  experience_id BIGINT NOT NULL REFERENCES experiences DEFERRABLE INITIALLY DEFERRED,
  child_id BIGINT NOT NULL REFERENCES children DEFERRABLE INITIALLY DEFERRED,
  prompt_key TEXT NOT NULL, why TEXT NOT NULL, note TEXT NOT NULL, asked_on TEXT,
  noted_by TEXT NOT NULL);
ALTER TABLE observations ADD COLUMN picture_id BIGINT REFERENCES pictures
  DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE response_groups ADD COLUMN is_kept_by_hand SMALLINT NOT NULL DEFAULT 0
  CHECK (is_kept_by_hand IN (0, 1));
ALTER TABLE response_groups ADD COLUMN list_order INTEGER NOT NULL DEFAULT 0;
ALTER TABLE response_groups ADD COLUMN carried_to TEXT;
ALTER TABLE meetings ADD COLUMN is_done SMALLINT NOT NULL DEFAULT 1 CHECK (is_done IN (0, 1));
CREATE TABLE meeting_quotes (
  meeting_id BIGINT NOT NULL REFERENCES meetings ON DELETE CASCADE, place INTEGER NOT NULL,
  quote_id BIGINT NOT NULL REFERENCES quotes DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (meeting_id, place));
CREATE TABLE meeting_carried_groups (
  meeting_id BIGINT NOT NULL REFERENCES meetings ON DELETE CASCADE, place INTEGER NOT NULL,
  group_id BIGINT NOT NULL REFERENCES response_groups DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (meeting_id, place));
CREATE TABLE meeting_notes (
  meeting_id BIGINT NOT NULL REFERENCES meetings ON DELETE CASCADE, place INTEGER NOT NULL,
  kind TEXT NOT NULL, words TEXT NOT NULL,
  group_id BIGINT REFERENCES response_groups DEFERRABLE INITIALLY DEFERRED,
  child_id BIGINT REFERENCES children DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (meeting_id, place));
CREATE TABLE reflections (
  id BIGINT PRIMARY KEY,
  experience_id BIGINT NOT NULL REFERENCES experiences DEFERRABLE INITIALLY DEFERRED,
  prompt_key TEXT NOT NULL, question TEXT NOT NULL, answer TEXT NOT NULL,
  answered_by TEXT NOT NULL, answered_on TEXT, list_order INTEGER NOT NULL);
CREATE TABLE goals (
  id BIGINT PRIMARY KEY, goal TEXT NOT NULL, source TEXT NOT NULL, list_order INTEGER NOT NULL);
CREATE TABLE quote_goals (
  quote_id BIGINT NOT NULL REFERENCES quotes ON DELETE CASCADE, place INTEGER NOT NULL,
  goal_id BIGINT NOT NULL REFERENCES goals DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (quote_id, place));
CREATE TABLE panel_goals (
  panel_id BIGINT NOT NULL REFERENCES panels ON DELETE CASCADE, place INTEGER NOT NULL,
  goal_id BIGINT NOT NULL REFERENCES goals DEFERRABLE INITIALLY DEFERRED,
  PRIMARY KEY (panel_id, place));
CREATE INDEX no_answers_by_experience ON no_answers (experience_id);
CREATE INDEX permission_records_by_child ON permission_records (child_id);
CREATE INDEX quotes_by_replied_to ON quotes (replies_to_id);
)";

// Walls with what hangs on them; findings that were left as they are.
const char* const kVersion8 = R"(
CREATE TABLE walls (id BIGINT PRIMARY KEY, form TEXT NOT NULL);
ALTER TABLE panels ADD COLUMN left_findings TEXT NOT NULL DEFAULT '';
)";

// Answers that are held together or apart by hand; how long the book is kept; files made of it,
// what they hold told by numbers that may be gone; photos of displays as they really hung.
const char* const kVersion9 = R"(
CREATE TABLE kept_pairs (
  id BIGINT PRIMARY KEY,
  answer_id BIGINT NOT NULL REFERENCES quotes DEFERRABLE INITIALLY DEFERRED,
  other_id BIGINT NOT NULL REFERENCES quotes DEFERRABLE INITIALLY DEFERRED,
  is_apart SMALLINT NOT NULL CHECK (is_apart IN (0, 1)));
CREATE INDEX kept_pairs_by_answer ON kept_pairs (answer_id);
CREATE INDEX kept_pairs_by_other ON kept_pairs (other_id);
ALTER TABLE book ADD COLUMN keep_until TEXT;
CREATE TABLE made_files (
  id BIGINT PRIMARY KEY, kind TEXT NOT NULL, file_name TEXT NOT NULL, made_on TEXT NOT NULL,
  audience TEXT, holds TEXT NOT NULL);
ALTER TABLE pictures ADD COLUMN display_id BIGINT REFERENCES displays
  DEFERRABLE INITIALLY DEFERRED;
ALTER TABLE pictures ADD COLUMN hung_on TEXT;
ALTER TABLE pictures ADD COLUMN panels_are_legible SMALLINT NOT NULL DEFAULT 1
  CHECK (panels_are_legible IN (0, 1));
)";

// Step n takes version n to n + 1.
const char* const kSteps[] = {kVersion1,
    kVersion2,
    kVersion3,
    kVersion4,
    kVersion5,
    kVersion6,
    kVersion7,
    kVersion8,
    kVersion9};

} // namespace

int currentSchemaVersion()
{
    return static_cast<int>(std::size(kSteps));
}

Result<> migrate(Database& database, int fromVersion, int toVersion)
{
    for (int step = fromVersion; step < toVersion; ++step) {
        const QStringList statements =
            QString::fromLatin1(kSteps[step]).split(QLatin1Char(';'), Qt::SkipEmptyParts);
        for (const QString& statement : statements) {
            if (statement.trimmed().isEmpty())
                continue;
            if (auto done = database.run(statement.trimmed()); !done)
                return done;
        }
    }
    if (auto marked =
            database.run(QStringLiteral("PRAGMA application_id = %1").arg(kApplicationId));
        !marked)
        return marked;
    return database.run(QStringLiteral("PRAGMA user_version = %1").arg(toVersion));
}

} // namespace wainscot
