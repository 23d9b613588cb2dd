CREATE TABLE half (id BIGINT PRIMARY KEY);
UPDATE shelf SET label = 'lost';
ALTER TABLE nowhere ADD COLUMN length_mm DECIMAL(10, 3);
