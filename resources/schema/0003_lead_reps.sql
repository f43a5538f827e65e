-- Version 3: the first reps of a lead-rep set are in a variation of their own.

ALTER TABLE set_entry ADD COLUMN lead_variation_id INTEGER REFERENCES variation;
ALTER TABLE set_entry ADD COLUMN lead_reps INTEGER CHECK (
    (lead_reps IS NULL) = (lead_variation_id IS NULL)
    AND (lead_reps IS NULL OR lead_reps BETWEEN 1 AND 100));
