package org.frisket.model;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.LongStream;


/**
 * Ids within a job: {@code l1, l2 …} for layers, {@code e1, e2 …} for elements, {@code g1, g2 …} for groups, {@code s1,
 * s2 …} for sheets. They are counted and not drawn at random, so that the same steps always make the same file. An id is never given twice while a later one is in use.
 */
public final class Ids {

	private static final Predicate<String> VALID = Pattern.compile("[A-Za-z0-9_][A-Za-z0-9_.-]*").asMatchPredicate();

	private Ids() {
	}

	/** Whether an id can stand in a file: Latin letters, digits, {@code _ . -}, the first not a dot or hyphen. */
	public static boolean valid(String id) {
		return VALID.test(id);
	}

	/** An id for one more layer of the job. */
	public static String nextLayer(Job job) {
		return "l" + (last('l', all(job)) + 1);
	}

	/** An id for one more element of the job. */
	public static String nextElement(Job job) {
		return nextElements(job, 1).get(0);
	}

	/** Ids for so many more elements of the job. */
	public static List<String> nextElements(Job job, int count) {
		long last = lastElement(job);
		return LongStream.rangeClosed(last + 1, last + count).mapToObj(number -> "e" + number).toList();
	}

	/** An id for one more group of the job. */
	public static String nextGroup(Job job) {
		return "g" + (last('g', all(job)) + 1);
	}

	/** An id for one more sheet of the job. */
	public static String nextSheet(Job job) {
		return "s" + (last('s', all(job)) + 1);
	}

	/** Gives an id to every layer, element, group and sheet of the job that has none. */
	public static void complete(Job job) {
		List<String> ids = all(job);
		long layer = last('l', ids);
		long element = lastElement(job);
		long group = last('g', ids);
		long sheet = last('s', ids);
		for (Layer l : job.getLayers()) {
			if (l.getId() == null) {
				l.setId("l" + ++layer);
			}
			for (Element e : l.getElements()) {
				if (e.getId() == null) {
					e.setId("e" + ++element);
				}
			}
		}
		for (Group g : Jobs.groups(job)) {
			if (g.getId() == null) {
				g.setId("g" + ++group);
			}
		}
		for (Sheet s : job.getSheets()) {
			if (s.getId() == null) {
				s.setId("s" + ++sheet);
			}
		}
	}

	/** The ids of the job, its layers, elements, groups and sheets, in file order. */
	static List<String> all(Job job) {
		List<String> ids = new ArrayList<>();
		add(job.getId(), ids);
		for (Layer layer : job.getLayers()) {
			add(layer.getId(), ids);
			for (Element element : layer.getElements()) {
				add(element.getId(), ids);
			}
		}
		Jobs.groups(job).forEach(group -> add(group.getId(), ids));
		job.getSheets().forEach(sheet -> add(sheet.getId(), ids));
		return ids;
	}

	private static void add(String id, List<String> ids) {
		if (id != null) {
			ids.add(id);
		}
	}

	/** Sheets remember elements that are gone, and must not take a new one for them. */
	private static long lastElement(Job job) {
		List<String> ids = all(job);
		for (Sheet sheet : job.getSheets()) {
			for (Placement placement : sheet.getPlacements()) {
				if (placement.getJob() == null && placement.getPart() != null) {
					add(placement.getPart().replaceFirst("#.*", ""), ids);
				}
			}
		}
		return last('e', ids);
	}

	private static long last(char kind, List<String> ids) {
		long last = 0;
		for (String id : ids) {
			if (id.length() > 1 && id.length() <= 16 && id.charAt(0) == kind
					&& id.chars().skip(1).allMatch(c -> c >= '0' && c <= '9')) {
				last = Math.max(last, Long.parseLong(id.substring(1)));
			}
		}
		return last;
	}
}
