-- In which order things were written: a clock that was ahead or was set back must not sort them.
ALTER TABLE run_event ADD COLUMN sequence BIGINT NOT NULL DEFAULT 0;
UPDATE run_event SET sequence = o.n
  FROM (SELECT id, ROW_NUMBER() OVER (ORDER BY at_micros, id) AS n FROM run_event) o
  WHERE o.id = run_event.id;
CREATE INDEX run_event_sequence ON run_event (sequence);

ALTER TABLE kept_case ADD COLUMN sequence BIGINT NOT NULL DEFAULT 0;
UPDATE kept_case SET sequence = o.n
  FROM (SELECT id, version, ROW_NUMBER() OVER (ORDER BY at_micros, id, version) AS n FROM kept_case) o
  WHERE o.id = kept_case.id AND o.version = kept_case.version;
CREATE INDEX kept_case_sequence ON kept_case (sequence);

ALTER TABLE handout ADD COLUMN sequence BIGINT NOT NULL DEFAULT 0;
UPDATE handout SET sequence = o.n
  FROM (SELECT id, version, ROW_NUMBER() OVER (ORDER BY at_micros, id, version) AS n FROM handout) o
  WHERE o.id = handout.id AND o.version = handout.version;
CREATE INDEX handout_sequence ON handout (sequence);

ALTER TABLE teaching_answer ADD COLUMN sequence BIGINT NOT NULL DEFAULT 0;
UPDATE teaching_answer SET sequence = o.n
  FROM (SELECT set_id, alias, number, ROW_NUMBER() OVER (ORDER BY at_micros, set_id, alias, number) AS n FROM teaching_answer) o
  WHERE o.set_id = teaching_answer.set_id AND o.alias = teaching_answer.alias AND o.number = teaching_answer.number;
CREATE INDEX teaching_answer_sequence ON teaching_answer (sequence);

ALTER TABLE day_book ADD COLUMN sequence BIGINT NOT NULL DEFAULT 0;
UPDATE day_book SET sequence = o.n
  FROM (SELECT day, version, ROW_NUMBER() OVER (ORDER BY at_micros, day, version) AS n FROM day_book) o
  WHERE o.day = day_book.day AND o.version = day_book.version;
CREATE INDEX day_book_sequence ON day_book (sequence);

DROP INDEX run_event_run;
CREATE INDEX run_event_run ON run_event (run_id, sequence);
