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
INSERT INTO book VALUES (1, 'Otters 2024', 'en');
INSERT INTO children VALUES (2, 'Ada', '', '2020-05-01', 0);
INSERT INTO children VALUES (7, 'Ben', 'Benny', NULL, 1);
INSERT INTO prompt_sets VALUES (1, 'One question', 'en');
INSERT INTO prompts VALUES (1, 0, 'notice', 'What do you notice?');
INSERT INTO experiences VALUES (1, 'Jelly', '2024-09-12', '', '', '', '', '', '', '', '', 'en', 1);
INSERT INTO quotes VALUES (3, 1, 7, 'notice', NULL, 'it is all wobly', '', 'said', 'exact', 1, '', '2024-09-12', 2);
INSERT INTO response_groups VALUES (1, 1, 'How it moves');
INSERT INTO group_quotes VALUES (1, 0, 3);
INSERT INTO displays VALUES (2, 1, 'Hall', 'building', 841, 594, 1500, 'Schoolroom', 'Rowan', '', 'en');
INSERT INTO pictures VALUES (4, 1, 'photo', 'aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa', 'jpeg', 'jelly.jpg', 4000, 3000, 6, NULL, NULL, 'Ben pokes the jelly', 1, '', 0.1, 0.2, 0.5, 0.5, 1);
INSERT INTO panels VALUES (5, 2, 1);
INSERT INTO pieces VALUES (9, 5, 'quote', 3, NULL, '', '', '', 0, 1, 0, 33, 33, 180, 60, 0, 0, 0, 0, 1, 0.5, 0.5, 1);
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
ALTER TABLE pictures ADD COLUMN treatment TEXT NOT NULL DEFAULT '';
ALTER TABLE pieces ADD COLUMN shown_words TEXT NOT NULL DEFAULT '';
ALTER TABLE pieces ADD COLUMN pairing TEXT NOT NULL DEFAULT '';
ALTER TABLE pieces ADD COLUMN palette TEXT NOT NULL DEFAULT '';
ALTER TABLE panels ADD COLUMN is_locked SMALLINT NOT NULL DEFAULT 0 CHECK (is_locked IN (0, 1));
ALTER TABLE pieces ADD COLUMN size_wish INTEGER NOT NULL DEFAULT 0
  CHECK (size_wish BETWEEN -2 AND 2);
ALTER TABLE pieces ADD COLUMN together_number INTEGER NOT NULL DEFAULT 0;
ALTER TABLE pieces ADD COLUMN starts_panel SMALLINT NOT NULL DEFAULT 0
  CHECK (starts_panel IN (0, 1));
ALTER TABLE pictures ADD COLUMN look_hash TEXT;
ALTER TABLE pictures ADD COLUMN look_sharpness INTEGER;
ALTER TABLE pictures ADD COLUMN look_lightness INTEGER;
ALTER TABLE pictures ADD COLUMN look_dark_permille INTEGER;
ALTER TABLE pictures ADD COLUMN look_bright_permille INTEGER;
INSERT INTO meetings VALUES (2, 1, '2024-09-20', 'They all poked it again.');
INSERT INTO meeting_groups VALUES (2, 0, 1);
INSERT INTO observations VALUES (3, 1, 'Ben came back to it twice.', NULL);
PRAGMA application_id = 1464750915;
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
INSERT INTO permission_records VALUES (1, 7, 'building', 'no', 'yes', 'yes', 'yes', 'no', '2024-09-02', 'her father', 'at the door');
INSERT INTO no_answers VALUES (2, 1, 7, 'wonder', 'passes', '', '2024-09-12', 'Ms Vale');
INSERT INTO meeting_quotes VALUES (2, 0, 3);
INSERT INTO meeting_notes VALUES (2, 0, 'agreement', 'Ice is water that waits.', 1, NULL);
INSERT INTO reflections VALUES (4, 1, '', 'Who found it hard?', 'Those who had to wait.', 'Ms Vale', '2024-09-21', 1);
INSERT INTO goals VALUES (5, 'Says what changed', 'own list', 1);
INSERT INTO quote_goals VALUES (3, 0, 5);
CREATE TABLE walls (id BIGINT PRIMARY KEY, form TEXT NOT NULL);
ALTER TABLE panels ADD COLUMN left_findings TEXT NOT NULL DEFAULT '';
INSERT INTO walls VALUES (6, '{"fittings":[{"kind":"door","place":[300,500,900,2100]}],"height":2600,"limit":"","name":"By the door","oldest":6,"panels":[],"viewers":"children","width":5200,"youngest":4}');
PRAGMA user_version = 8;
