package org.frisket.orders.compare;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.frisket.model.Job;
import org.frisket.model.Placement;

/**
 * Ids are counted, so that two desks give the same one to different things. Those of this desk get others here, for
 * what is in the order book may be known by its id elsewhere.
 */
final class ApartIds {

	private final Job base;
	private final Job mine;
	private final Job theirs;
	private final Set<String> taken = new HashSet<>();

	private ApartIds(Job base, Job mine, Job theirs) {
		this.base = base;
		this.mine = mine;
		this.theirs = theirs;
		List.of(base, mine, theirs).forEach(job -> taken.addAll(ids(job)));
	}

	/**
	 * Changes ids of the first two, so that the same one means the same thing in all.
	 *
	 * @return what things of this desk were called, by what they are called now
	 */
	static Map<String, String> make(Job base, Job mine, Job theirs) {
		return new ApartIds(base, mine, theirs).make();
	}

	/** Gives things their old ids again where nothing is called so in the end. @param were as {@link #make} said */
	static void giveBack(Map<String, String> were, Job merged) {
		Set<String> taken = ids(merged);
		Snapshot snapshot = Snapshot.of(merged);
		Map<String, String> free = new HashMap<>();
		snapshot.nodes().forEach((key, node) -> {
			String was = were.get(EcoreUtil.getID(node.object()));
			if (was != null && taken.add(was)) {
				free.put(key, was);
			}
		});
		rename(snapshot, free, merged);
	}

	private Map<String, String> make() {
		Snapshot ofBase = Snapshot.of(base);
		Snapshot ofMine = Snapshot.of(mine);
		Snapshot ofTheirs = Snapshot.of(theirs);
		Map<String, String> oldOnes = new HashMap<>();
		Map<String, String> newOnes = new HashMap<>();
		for (String key : ofBase.nodes().keySet()) {
			Node before = ofBase.nodes().get(key);
			Node here = ofMine.nodes().get(key);
			Node there = ofTheirs.nodes().get(key);
			// an id that was free again was given to something of another kind
			if (there != null && isOther(there, before)) {
				oldOnes.put(key, fresh(before));
				if (here != null && !isOther(here, before)) {
					newOnes.put(key, oldOnes.get(key));
				}
			} else if (here != null && isOther(here, before)) {
				newOnes.put(key, fresh(here));
			}
		}
		Set<String> old = new HashSet<>(ofBase.nodes().keySet());
		old.removeAll(oldOnes.keySet());
		for (String key : different(old, ofMine, ofTheirs, newOnes.keySet())) {
			newOnes.put(key, fresh(ofMine.nodes().get(key)));
		}
		Map<String, String> were = new HashMap<>();
		newOnes.forEach((key, id) -> were.put(id, EcoreUtil.getID(ofMine.nodes().get(key).object())));
		rename(ofBase, oldOnes, base);
		rename(ofMine, newOnes, mine);
		return were;
	}

	private static boolean isOther(Node node, Node before) {
		return node.object().eClass() != before.object().eClass();
	}

	/** What is new on both sides and called the same, but is not the same, or leads to what is not the same. */
	private static Set<String> different(Set<String> old, Snapshot mine, Snapshot theirs, Set<String> renamed) {
		Set<String> different = new LinkedHashSet<>();
		boolean grew = true;
		while (grew) {
			grew = false;
			for (Node here : mine.nodes().values()) {
				Node there = theirs.nodes().get(here.key());
				if (there != null && !old.contains(here.key()) && !renamed.contains(here.key())
						&& !different.contains(here.key())
						&& EcoreUtil.getID(here.object()) != null
						&& (!here.values().equals(there.values()) || isOther(here, there) || leads(here, different)
						|| leads(here, renamed))) {
					grew = different.add(here.key());
				}
			}
		}
		return different;
	}

	private static boolean leads(Node node, Set<String> to) {
		return node.values().values().stream().anyMatch(value -> value instanceof Links links
				&& links.keys().stream().anyMatch(to::contains) || value instanceof Place place
				&& to.contains(place.owner()));
	}

	private static void rename(Snapshot snapshot, Map<String, String> ids, Job job) {
		Map<String, String> parts = new HashMap<>();
		ids.forEach((key, id) -> {
			EObject object = snapshot.nodes().get(key).object();
			parts.put(EcoreUtil.getID(object), id);
			EcoreUtil.setID(object, id);
		});
		for (Iterator<EObject> all = job.eAllContents(); all.hasNext();) {
			if (all.next() instanceof Placement placement && placement.getJob() == null) {
				String element = element(placement);
				if (parts.containsKey(element)) {
					placement.setPart(parts.get(element) + placement.getPart().substring(element.length()));
				}
			}
		}
	}

	/** The element whose part lies there. */
	static String element(Placement placement) {
		return Objects.toString(placement.getPart(), "").replaceFirst("#.*", "");
	}

	/** All that anything is called in a job, or was called that sheets remember. */
	private static Set<String> ids(Job job) {
		Set<String> ids = new HashSet<>();
		for (Iterator<EObject> all = job.eAllContents(); all.hasNext();) {
			EObject each = all.next();
			ids.add(each instanceof Placement placement ? element(placement) : EcoreUtil.getID(each));
		}
		return ids;
	}

	/** One that follows all that are given anywhere. */
	private String fresh(Node node) {
		String stem = EcoreUtil.getID(node.object()).replaceFirst("\\d+$", "");
		long last = taken.stream().filter(id -> id != null && id.startsWith(stem))
				.map(id -> id.substring(stem.length())).filter(number -> number.matches("\\d{1,15}"))
				.mapToLong(Long::parseLong).max().orElse(0);
		taken.add(stem + (last + 1));
		return stem + (last + 1);
	}
}
