CREATE TABLE stock (
	id VARCHAR(64) NOT NULL PRIMARY KEY,
	revision BIGINT NOT NULL,
	name VARCHAR(200) NOT NULL,
	name_key VARCHAR(800) NOT NULL,
	description VARCHAR(4000) NOT NULL,
	family VARCHAR(16) NOT NULL,
	grammage DECIMAL(12, 6),
	pounds DECIMAL(14, 6),
	grade VARCHAR(16),
	caliper DECIMAL(10, 6),
	caliper_source VARCHAR(16),
	colour VARCHAR(200) NOT NULL,
	finish VARCHAR(16) NOT NULL,
	grain VARCHAR(16) NOT NULL,
	price DECIMAL(14, 4),
	currency VARCHAR(3),
	on_hand DECIMAL(14, 3) NOT NULL,
	low_water DECIMAL(14, 3) NOT NULL,
	abrasion DECIMAL(7, 3) NOT NULL,
	notes VARCHAR(4000) NOT NULL,
	changed TIMESTAMP WITH TIME ZONE NOT NULL,
	CONSTRAINT stock_name_once UNIQUE (name_key)
);

CREATE TABLE stock_size (
	stock VARCHAR(64) NOT NULL REFERENCES stock (id) ON DELETE CASCADE,
	place INTEGER NOT NULL,
	form VARCHAR(8) NOT NULL,
	width DECIMAL(14, 6) NOT NULL,
	height DECIMAL(14, 6),
	PRIMARY KEY (stock, place)
);
