package org.frisket.material;

import org.frisket.material.weights.Bulk;

/** What the face is like, and with it how much room its weight usually takes. */
public enum Finish {
	UNKNOWN(Bulk.SMOOTH), COATED(Bulk.COATED), SMOOTH(Bulk.SMOOTH), TEXTURED(Bulk.TEXTURED), METALLIC(Bulk.COATED),
	GLITTER(Bulk.TEXTURED), ADHESIVE(Bulk.COATED);

	private final Bulk bulk;

	Finish(Bulk bulk) {
		this.bulk = bulk;
	}

	/** Common practice, no source; for estimates only. */
	public Bulk usualBulk() {
		return bulk;
	}
}
