-- The last number that was given; one row.
CREATE TABLE work_counter (
	last_number BIGINT NOT NULL
);
INSERT INTO work_counter (last_number) VALUES (0);

-- Jobs laid together to be run. What lies where is in the document of a job of the order book, which holds nothing else.
CREATE TABLE work_run (
	number BIGINT NOT NULL PRIMARY KEY,
	job VARCHAR(64) NOT NULL,
	planned_at TIMESTAMP WITH TIME ZONE NOT NULL,
	planned_by VARCHAR(200) NOT NULL,
	seconds DECIMAL(12, 3) NOT NULL,
	CONSTRAINT work_run_job_once UNIQUE (job)
);

-- What of each job is on it. A piece is all that a copy of a job has in one stock and colour.
CREATE TABLE work_run_piece (
	run BIGINT NOT NULL REFERENCES work_run (number) ON DELETE CASCADE,
	job VARCHAR(64) NOT NULL,
	stock VARCHAR(200) NOT NULL,
	colour VARCHAR(32) NOT NULL,
	pieces INTEGER NOT NULL,
	printed BOOLEAN NOT NULL,
	PRIMARY KEY (run, job, stock, colour)
);

CREATE INDEX work_run_piece_job ON work_run_piece (job);

-- Lengths in mm, areas in mm²; the amount is one of a sheet, of a roll what is used in metres.
CREATE TABLE work_run_sheet (
	run BIGINT NOT NULL REFERENCES work_run (number) ON DELETE CASCADE,
	place INTEGER NOT NULL,
	stock VARCHAR(200) NOT NULL,
	colour VARCHAR(32) NOT NULL,
	leftover VARCHAR(64) NOT NULL,
	amount DECIMAL(14, 3) NOT NULL,
	width DECIMAL(14, 3) NOT NULL,
	height DECIMAL(14, 3) NOT NULL,
	parts_area DECIMAL(18, 3) NOT NULL,
	offcut_width DECIMAL(14, 3) NOT NULL,
	offcut_height DECIMAL(14, 3) NOT NULL,
	PRIMARY KEY (run, place)
);

-- What was said to be done: added to, and never changed. What is taken back is said once more, with the signs turned, so
-- that sums over all that was said are what holds.
CREATE TABLE work_mark (
	run BIGINT NOT NULL REFERENCES work_run (number) ON DELETE CASCADE,
	place INTEGER NOT NULL,
	step VARCHAR(8) NOT NULL,
	made_at TIMESTAMP WITH TIME ZONE NOT NULL,
	person VARCHAR(200) NOT NULL,
	seconds DECIMAL(12, 3),
	closes INTEGER NOT NULL,
	takes_back INTEGER,
	remark VARCHAR(4000) NOT NULL,
	PRIMARY KEY (run, place)
);

CREATE TABLE work_mark_piece (
	run BIGINT NOT NULL,
	place INTEGER NOT NULL,
	job VARCHAR(64) NOT NULL,
	stock VARCHAR(200) NOT NULL,
	colour VARCHAR(32) NOT NULL,
	made INTEGER NOT NULL,
	spoiled INTEGER NOT NULL,
	PRIMARY KEY (run, place, job, stock, colour),
	FOREIGN KEY (run, place) REFERENCES work_mark (run, place) ON DELETE CASCADE
);

CREATE INDEX work_mark_piece_job ON work_mark_piece (job);

-- What was used, and by how much the shelf was counted down, which may be less than was used.
CREATE TABLE work_mark_sheet (
	run BIGINT NOT NULL,
	place INTEGER NOT NULL,
	stock VARCHAR(200) NOT NULL,
	colour VARCHAR(32) NOT NULL,
	amount DECIMAL(14, 3) NOT NULL,
	counted DECIMAL(14, 3) NOT NULL,
	PRIMARY KEY (run, place, stock, colour),
	FOREIGN KEY (run, place) REFERENCES work_mark (run, place) ON DELETE CASCADE
);

-- Leftovers that were used (-1), or kept (1).
CREATE TABLE work_mark_leftover (
	run BIGINT NOT NULL,
	place INTEGER NOT NULL,
	leftover VARCHAR(64) NOT NULL,
	amount INTEGER NOT NULL,
	PRIMARY KEY (run, place, leftover),
	FOREIGN KEY (run, place) REFERENCES work_mark (run, place) ON DELETE CASCADE
);

-- Where jobs were brought by what was said, so that they can be brought back.
CREATE TABLE work_move (
	run BIGINT NOT NULL,
	place INTEGER NOT NULL,
	job VARCHAR(64) NOT NULL,
	from_stage VARCHAR(16) NOT NULL,
	to_stage VARCHAR(16) NOT NULL,
	since TIMESTAMP WITH TIME ZONE NOT NULL,
	PRIMARY KEY (run, place, job),
	FOREIGN KEY (run, place) REFERENCES work_mark (run, place) ON DELETE CASCADE
);

CREATE INDEX work_move_job ON work_move (job);
