package org.frisket.orders.compare;

import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;

import org.eclipse.emf.common.util.ECollections;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.Job;
import org.frisket.model.JobContent;

/** Makes a job of what was merged. */
final class Assembly {

	private final Merging merging;
	private final Map<String, EObject> objects = new HashMap<>();

	private Assembly(Merging merging) {
		this.merging = merging;
	}

	/** @param theirs a job that nobody else uses, as it is in the order book; it becomes the merged one */
	static void make(Merging merging, Job theirs) {
		new Assembly(merging).make(Snapshot.of(theirs));
	}

	private void make(Snapshot theirs) {
		for (Node node : merging.nodes().values()) {
			objects.put(node.key(), theirs.node(node.key()).map(Node::object).orElseGet(() -> fresh(node.object())));
		}
		// all places before anything within: what is moved is never at two of them, nor at none for longer
		merging.nodes().values().forEach(this::fill);
		for (Node node : merging.nodes().values()) {
			EObject object = objects.get(node.key());
			Map<String, Object> has = theirs.node(node.key()).map(Node::values).orElse(Map.of());
			for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
				String name = feature.getName();
				if (node.values().containsKey(name) && !Objects.equals(node.values().get(name), has.get(name))) {
					set(object, feature, node.values().get(name));
				}
			}
		}
		merging.nodes().values().forEach(node -> JobContent
				.copyUnknown(((Unknown) node.values().get(Node.UNKNOWN)).of(), objects.get(node.key())));
	}

	private static EObject fresh(EObject like) {
		EObject fresh = EcoreUtil.create(like.eClass());
		for (EStructuralFeature feature : like.eClass().getEAllStructuralFeatures()) {
			if (Snapshot.tells(like, feature)) {
				fresh.eSet(feature, like.eGet(feature));
			}
		}
		return fresh;
	}

	@SuppressWarnings("unchecked")
	private void fill(Node node) {
		EObject object = objects.get(node.key());
		for (EReference reference : object.eClass().getEAllReferences()) {
			if (Snapshot.holdsNodes(reference)) {
				List<EObject> wanted = merging.order(new Place(node.key(), reference.getName())).stream()
						.map(objects::get)
						.toList();
				ECollections.setEList((EList<EObject>) object.eGet(reference), wanted);
			}
		}
	}

	private void set(EObject object, EStructuralFeature feature, Object value) {
		if (value instanceof Links links) {
			List<EObject> wanted = links.keys().stream().map(objects::get).toList();
			set(object, feature, wanted);
		} else if (value instanceof Parts parts) {
			List<EObject> copies = List.copyOf(EcoreUtil.copyAll(parts.objects()));
			set(object, feature, copies);
			for (int i = 0; i < copies.size(); i++) {
				copyUnknown(parts.objects().get(i), copies.get(i));
			}
		} else {
			object.eSet(feature, value);
		}
	}

	@SuppressWarnings("unchecked")
	private static void set(EObject object, EStructuralFeature feature, List<EObject> wanted) {
		if (feature.isMany()) {
			ECollections.setEList((EList<EObject>) object.eGet(feature), wanted);
		} else {
			object.eSet(feature, wanted.isEmpty() ? null : wanted.get(0));
		}
	}

	private static void copyUnknown(EObject from, EObject to) {
		JobContent.copyUnknown(from, to);
		Iterator<EObject> within = to.eAllContents();
		for (Iterator<EObject> all = from.eAllContents(); all.hasNext();) {
			JobContent.copyUnknown(all.next(), within.next());
		}
	}
}
