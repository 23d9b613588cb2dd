package org.frisket.orders.compare;

import org.eclipse.emf.ecore.EObject;
import org.frisket.model.JobContent;

/** What a file says of an object beyond what this version knows. */
record Unknown(EObject of, String text) {

	Unknown(EObject of) {
		this(of, JobContent.unknown(of));
	}

	@Override
	public boolean equals(Object other) {
		return other instanceof Unknown unknown && text.equals(unknown.text);
	}

	@Override
	public int hashCode() {
		return text.hashCode();
	}

	@Override
	public String toString() {
		return text;
	}
}
