package org.frisket.orders.compare;

import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.frisket.model.Picture;
import org.frisket.model.Placement;
import org.frisket.model.Wording;

/**
 * A part of a job that is told from others by an id, or by what it says of itself.
 *
 * @param key    the same in all states of the job
 * @param kind   what it is told from others among: all elements are one kind
 * @param values what it says of itself, by the name of the feature; {@link #PLACE}, {@link #GROUP} and {@link #UNKNOWN}
 *               are among them, nodes within it are not
 */
record Node(String key, String kind, EObject object, Map<String, Object> values) {

	/** Which node it lies within. */
	static final String PLACE = "#place";
	/** Which group it is a member of; null for none. */
	static final String GROUP = "#group";
	/** What this version does not know of it. */
	static final String UNKNOWN = "#unknown";
	/** In which order the nodes within it stand. */
	static final String ORDER = "#order";

	/** Letters that are meant by their number in the text have a meaning together with it only. */
	private static final Set<String> LETTERS = Set.of("text", "spans", "nudges", "bridges", "islands");
	/** What a font can do is said in its own terms. */
	private static final Set<String> FONT = Set.of("font", "features", "axes");
	private static final Set<String> IMAGE = Set.of("image", "mediaType");

	/** Which of its features are changed together or not at all: a name that they share. */
	String unit(String feature) {
		if (object instanceof Wording && LETTERS.contains(feature)) {
			return "text";
		}
		if (object instanceof Wording && FONT.contains(feature)) {
			return "font";
		}
		return object instanceof Picture && IMAGE.contains(feature) ? "image" : feature;
	}

	Place place() {
		return (Place) values.get(PLACE);
	}

	Place group() {
		return (Place) values.get(GROUP);
	}

	/** What the user decides of in one: it is asked about all placements at once. */
	String row() {
		return object instanceof Placement ? kind : key;
	}
}
