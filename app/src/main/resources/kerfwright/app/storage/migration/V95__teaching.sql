-- Questions of the teacher's own, sets of questions, and answers under an alias; never a name.
CREATE TABLE teaching_question (
  id TEXT NOT NULL PRIMARY KEY,
  version INTEGER NOT NULL,
  document TEXT NOT NULL
);

CREATE TABLE teaching_set (
  id TEXT NOT NULL PRIMARY KEY,
  at_micros BIGINT NOT NULL,
  document TEXT NOT NULL
);

CREATE TABLE teaching_answer (
  set_id TEXT NOT NULL,
  alias TEXT NOT NULL,
  number INTEGER NOT NULL,
  topic TEXT NOT NULL,
  kind TEXT NOT NULL,
  option_given INTEGER NOT NULL,
  was_right INTEGER NOT NULL,
  at_micros BIGINT NOT NULL,
  PRIMARY KEY (set_id, alias, number)
);

CREATE INDEX teaching_answer_alias ON teaching_answer (alias);
