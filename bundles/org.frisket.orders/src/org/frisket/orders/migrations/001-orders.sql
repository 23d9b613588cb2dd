CREATE TABLE orders_customer (
	id VARCHAR(64) NOT NULL PRIMARY KEY,
	revision BIGINT NOT NULL,
	name VARCHAR(200) NOT NULL,
	name_key VARCHAR(800) NOT NULL,
	contact VARCHAR(200) NOT NULL,
	mail VARCHAR(320) NOT NULL,
	phone VARCHAR(100) NOT NULL,
	address VARCHAR(1000) NOT NULL,
	agreement VARCHAR(1000) NOT NULL,
	notes VARCHAR(4000) NOT NULL,
	changed TIMESTAMP WITH TIME ZONE NOT NULL,
	CONSTRAINT orders_customer_once UNIQUE (name_key)
);

-- The last number that was given; one row. Numbers of dockets have no gaps.
CREATE TABLE orders_counter (
	last_number BIGINT NOT NULL
);
INSERT INTO orders_counter (last_number) VALUES (0);

CREATE TABLE orders_job (
	id VARCHAR(64) NOT NULL PRIMARY KEY,
	number BIGINT NOT NULL,
	revision BIGINT NOT NULL,
	title VARCHAR(1000) NOT NULL,
	customer VARCHAR(64) REFERENCES orders_customer (id),
	stage VARCHAR(16) NOT NULL,
	stage_since TIMESTAMP WITH TIME ZONE NOT NULL,
	due DATE,
	quantity INTEGER NOT NULL,
	stock VARCHAR(2000) NOT NULL,
	words VARCHAR(4000) NOT NULL,
	created TIMESTAMP WITH TIME ZONE NOT NULL,
	changed TIMESTAMP WITH TIME ZONE NOT NULL,
	changed_by VARCHAR(200) NOT NULL,
	CONSTRAINT orders_number_once UNIQUE (number)
);

CREATE INDEX orders_job_changed ON orders_job (changed);
CREATE INDEX orders_job_customer ON orders_job (customer);

-- The document is its file, packed and as text: the two databases share no type for bytes of any length.
CREATE TABLE orders_document (
	job VARCHAR(64) NOT NULL REFERENCES orders_job (id) ON DELETE CASCADE,
	part INTEGER NOT NULL,
	content VARCHAR(1000000) NOT NULL,
	PRIMARY KEY (job, part)
);

-- Added to, and never changed.
CREATE TABLE orders_stage_change (
	job VARCHAR(64) NOT NULL REFERENCES orders_job (id) ON DELETE CASCADE,
	place INTEGER NOT NULL,
	changed_at TIMESTAMP WITH TIME ZONE NOT NULL,
	person VARCHAR(200) NOT NULL,
	from_stage VARCHAR(16) NOT NULL,
	to_stage VARCHAR(16) NOT NULL,
	remark VARCHAR(4000) NOT NULL,
	PRIMARY KEY (job, place)
);
