package org.frisket.orders.compare;

import java.util.List;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.JobContent;

/** Objects without an identity of their own, such as the operations of an element: together they are one value. */
record Parts(List<EObject> objects) {

	@Override
	public boolean equals(Object other) {
		return other instanceof Parts parts && EcoreUtil.equals(objects, parts.objects)
				&& unknown().equals(parts.unknown());
	}

	@Override
	public int hashCode() {
		return objects.size();
	}

	private List<String> unknown() {
		return objects.stream().map(JobContent::unknown).toList();
	}
}
