-- What is to be done today is asked for by stage, of a few hundred jobs among all that there ever were.
CREATE INDEX orders_job_stage ON orders_job (stage);
