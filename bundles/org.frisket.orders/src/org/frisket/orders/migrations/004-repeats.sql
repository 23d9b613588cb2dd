-- Which jobs a job is a repeat of, the latest first; its document says so too.
CREATE TABLE orders_repeat (
	job VARCHAR(64) NOT NULL REFERENCES orders_job (id) ON DELETE CASCADE,
	place INTEGER NOT NULL,
	of_job VARCHAR(64) NOT NULL REFERENCES orders_job (id) ON DELETE CASCADE,
	PRIMARY KEY (job, place)
);

CREATE INDEX orders_repeat_of ON orders_repeat (of_job);

-- What of the studio a job was made with: stock, machines, tools and what was agreed, as they were then.
CREATE TABLE orders_fact (
	job VARCHAR(64) NOT NULL REFERENCES orders_job (id) ON DELETE CASCADE,
	subject VARCHAR(16) NOT NULL,
	item VARCHAR(200) NOT NULL,
	field VARCHAR(64) NOT NULL,
	content VARCHAR(4000) NOT NULL,
	PRIMARY KEY (job, subject, item, field)
);
