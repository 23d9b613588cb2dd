package org.frisket.orders.desk;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.frisket.orders.Entry;

/** What is seen of what was found: jobs, and headings of groups that may be folded. Only for one thread. */
public final class BookLines {

	private final BookSight sight;
	private final Set<String> folded;
	/** Where each group begins, and at last where the lines end; without groups there is none. */
	private final int[] starts;
	private Map<BookLine, Integer> indices;
	/** Without groups: the line of each place in the table, -1 where it is not seen. */
	private int[] linesOfPlaces;

	BookLines(BookSight sight, Set<String> folded) {
		this.sight = sight;
		this.folded = Set.copyOf(folded);
		List<BookGroup> groups = sight.groups();
		starts = new int[groups.size() + 1];
		for (int i = 0; i < groups.size(); i++) {
			starts[i + 1] = starts[i] + 1 + (isFolded(groups.get(i)) ? 0 : groups.get(i).size());
		}
		if (groups.isEmpty()) {
			starts[0] = sight.size();
		}
	}

	public BookSight sight() {
		return sight;
	}

	/** How many lines there are. */
	public int size() {
		return starts[starts.length - 1];
	}

	public boolean isFolded(BookGroup group) {
		return folded.contains(group.value());
	}

	/** The group that a line is in, or is the heading of; empty without groups. */
	public Optional<BookGroup> group(int index) {
		return sight.groups().isEmpty() ? Optional.empty() : Optional.of(sight.groups().get(groupAt(index)));
	}

	private int groupAt(int index) {
		int found = Arrays.binarySearch(starts, index);
		return found >= 0 ? found : -found - 2;
	}

	/** The job of a line; empty for a heading. */
	public Optional<Entry> job(int index) {
		int place;
		if (sight.groups().isEmpty()) {
			place = sight.places()[index];
		} else {
			int group = groupAt(index);
			if (starts[group] == index) {
				return Optional.empty();
			}
			place = sight.groups().get(group).place(index - starts[group] - 1);
		}
		return Optional.of(sight.table().jobs().get(place));
	}

	public BookLine line(int index) {
		return new BookLine(group(index).map(BookGroup::value).orElse(""), job(index).map(Entry::number).orElse(0L));
	}

	/** Where a line is; -1 if it is not seen. */
	public int indexOf(BookLine line) {
		if (sight.groups().isEmpty()) {
			return line.group().isEmpty() ? indexOf(line.number()) : -1;
		}
		if (indices == null) {
			indices = new HashMap<>();
			for (int i = 0; i < size(); i++) {
				indices.put(line(i), i);
			}
		}
		return indices.getOrDefault(line, -1);
	}

	/** Of a job, where there are no groups: among many, it is not to take its time when a key is pressed. */
	private int indexOf(long number) {
		if (linesOfPlaces == null) {
			linesOfPlaces = new int[sight.table().jobs().size()];
			Arrays.fill(linesOfPlaces, -1);
			for (int i = 0; i < size(); i++) {
				linesOfPlaces[sight.places()[i]] = i;
			}
		}
		int place = sight.table().placeOf(number);
		return place < 0 ? -1 : linesOfPlaces[place];
	}
}
