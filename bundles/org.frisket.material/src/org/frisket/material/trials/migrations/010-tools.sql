-- Tools and machines are kept as the texts their options describe; what an edge has gone through is counted.
CREATE TABLE settings_tool (
	id VARCHAR(64) NOT NULL PRIMARY KEY,
	kind VARCHAR(32) NOT NULL,
	worn DOUBLE PRECISION
);

CREATE TABLE settings_tool_text (
	tool VARCHAR(64) NOT NULL REFERENCES settings_tool (id) ON DELETE CASCADE,
	name VARCHAR(64) NOT NULL,
	setting VARCHAR(1000) NOT NULL,
	PRIMARY KEY (tool, name)
);

CREATE TABLE settings_machine (
	id VARCHAR(64) NOT NULL PRIMARY KEY
);

CREATE TABLE settings_machine_text (
	machine VARCHAR(64) NOT NULL REFERENCES settings_machine (id) ON DELETE CASCADE,
	name VARCHAR(64) NOT NULL,
	setting VARCHAR(1000) NOT NULL,
	PRIMARY KEY (machine, name)
);

CREATE TABLE settings_rule (
	name VARCHAR(64) NOT NULL PRIMARY KEY,
	setting VARCHAR(1000) NOT NULL
);
