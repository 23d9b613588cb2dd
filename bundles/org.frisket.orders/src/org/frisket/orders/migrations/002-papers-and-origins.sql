-- What was handed out of a job on paper, or shown instead of it: added to, and never changed.
CREATE TABLE orders_paper (
	job VARCHAR(64) NOT NULL REFERENCES orders_job (id) ON DELETE CASCADE,
	place INTEGER NOT NULL,
	kind VARCHAR(16) NOT NULL,
	made_at TIMESTAMP WITH TIME ZONE NOT NULL,
	person VARCHAR(200) NOT NULL,
	remark VARCHAR(4000) NOT NULL,
	PRIMARY KEY (job, place)
);

-- What an order is called where it comes from, so that it is taken in once.
CREATE TABLE orders_reference (
	reference VARCHAR(200) NOT NULL PRIMARY KEY,
	job VARCHAR(64) NOT NULL REFERENCES orders_job (id) ON DELETE CASCADE
);

CREATE INDEX orders_reference_job ON orders_reference (job);

-- What jobs looked like when they came as files that did not say which job they are.
CREATE TABLE orders_arrival (
	job VARCHAR(64) NOT NULL PRIMARY KEY REFERENCES orders_job (id) ON DELETE CASCADE,
	digest VARCHAR(64) NOT NULL
);

CREATE INDEX orders_arrival_digest ON orders_arrival (digest);
