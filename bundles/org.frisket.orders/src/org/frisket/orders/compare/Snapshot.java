package org.frisket.orders.compare;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.Job;
import org.frisket.model.impl.FrisketPackageImpl;

/** A job taken apart into nodes. The job is not to be changed while it is in use. */
final class Snapshot {

	/** What tells apart what has no id. */
	private static final Map<EClass, List<EStructuralFeature>> TELLING = Map.of(
			FrisketPackageImpl.Literals.PLACEMENT, List.of(FrisketPackageImpl.Literals.PLACEMENT__JOB,
					FrisketPackageImpl.Literals.PLACEMENT__PART, FrisketPackageImpl.Literals.PLACEMENT__COPY),
			FrisketPackageImpl.Literals.GUEST, List.of(FrisketPackageImpl.Literals.GUEST__JOB),
			FrisketPackageImpl.Literals.GUIDE, List.of(FrisketPackageImpl.Literals.GUIDE__ACROSS,
					FrisketPackageImpl.Literals.GUIDE__AT));

	/** References that say where something belongs, as if it lay within. */
	private static final Set<EReference> MEMBERS = Set.of(FrisketPackageImpl.Literals.GROUP__ELEMENTS);

	private final Map<String, Node> nodes = new LinkedHashMap<>();
	private final Map<EObject, String> keys = new HashMap<>();
	private final Map<Place, List<String>> orders = new HashMap<>();

	private Snapshot() {
	}

	static Snapshot of(Job job) {
		Snapshot snapshot = new Snapshot();
		snapshot.name(job, "Job");
		snapshot.nodes.values().forEach(snapshot::read);
		snapshot.nodes.values().forEach(snapshot::readMembers);
		return snapshot;
	}

	/** All of them, each before those within it. */
	Map<String, Node> nodes() {
		return nodes;
	}

	Optional<Node> node(String key) {
		return Optional.ofNullable(nodes.get(key));
	}

	/** Keys of the nodes at a place, in their order. */
	List<String> order(Place place) {
		return orders.getOrDefault(place, List.of());
	}

	/** Whether a feature holds nodes. */
	static boolean holdsNodes(EStructuralFeature feature) {
		return feature instanceof EReference reference && reference.isMany() && (MEMBERS.contains(reference)
				|| reference.isContainment() && (reference.getEReferenceType().getEIDAttribute() != null
						|| TELLING.containsKey(reference.getEReferenceType())));
	}

	/** What tells an object apart is the same wherever it is found, and is not compared. */
	static boolean tells(EObject object, EStructuralFeature feature) {
		return feature == object.eClass().getEIDAttribute() && !(object instanceof Job)
				|| TELLING.getOrDefault(object.eClass(), List.of()).contains(feature);
	}

	private void name(EObject object, String kind) {
		String key = object instanceof Job ? kind : kind + " " + identity(object);
		String free = key;
		for (int i = 2; nodes.containsKey(free); i++) {
			free = key + " (" + i + ")";
		}
		nodes.put(free, new Node(free, kind, object, new LinkedHashMap<>()));
		keys.put(object, free);
		for (EReference reference : object.eClass().getEAllContainments()) {
			if (holdsNodes(reference)) {
				within(object, reference).forEach(inner -> name(inner, reference.getEReferenceType().getName()));
			}
		}
	}

	private static String identity(EObject object) {
		List<EStructuralFeature> telling = TELLING.get(object.eClass());
		return telling == null ? String.valueOf(EcoreUtil.getID(object))
				: telling.stream().map(feature -> String.valueOf(object.eGet(feature)))
				.collect(Collectors.joining(" "));
	}

	private void read(Node node) {
		EObject object = node.object();
		if (object.eContainer() != null) {
			node.values().put(Node.PLACE, new Place(keys.get(object.eContainer()),
					object.eContainingFeature().getName()));
		}
		node.values().put(Node.GROUP, null);
		for (EStructuralFeature feature : object.eClass().getEAllStructuralFeatures()) {
			if (holdsNodes(feature)) {
				orders.put(new Place(node.key(), feature.getName()),
						within(object, feature).stream().map(this::key).toList());
			} else if (!tells(object, feature)) {
				node.values().put(feature.getName(), value(object, feature));
			}
		}
		node.values().put(Node.UNKNOWN, new Unknown(object));
	}

	private Object value(EObject object, EStructuralFeature feature) {
		Object value = object.eGet(feature);
		if (!(feature instanceof EReference reference)) {
			return feature.isMany() ? List.copyOf((List<?>) value) : value;
		}
		List<EObject> objects = feature.isMany() ? within(object, feature)
				: value == null ? List.of() : List.of((EObject) value);
		return reference.isContainment() ? new Parts(objects) : new Links(objects.stream().map(this::key).toList());
	}

	private void readMembers(Node node) {
		for (EReference reference : node.object().eClass().getEAllReferences()) {
			if (MEMBERS.contains(reference)) {
				Place place = new Place(node.key(), reference.getName());
				order(place).forEach(member -> node(member).ifPresent(each -> each.values().put(Node.GROUP, place)));
			}
		}
	}

	private String key(EObject object) {
		return String.valueOf(keys.get(object));
	}

	@SuppressWarnings("unchecked")
	private static List<EObject> within(EObject object, EStructuralFeature feature) {
		return List.copyOf((List<EObject>) object.eGet(feature));
	}
}
