package org.frisket.editing.wording;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.arranging.Box;
import org.frisket.editing.internal.CopiedElements;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.TextChange;
import org.frisket.model.Wording;

/**
 * Makes one of some elements for each line of a list, place cards for guests for instance. A wording among them says
 * the first line; it says the next ones in copies, which are laid in rows. What follows the elements, such as a mat
 * behind them, comes along unless it follows others too.
 */
public final class RepeatForLines extends RecordingEdit {

	/** More lines than that are refused: a list of that length was pasted by mistake. */
	public static final int MOST = 1000;
	/** Between copies, in mm. */
	private static final double GAP = 5;

	private final List<Element> elements;
	private final Wording wording;
	private final List<String> lines;
	private final Rows rows;
	private final List<Element> copies = new ArrayList<>();

	/** How copies lie: so far to the right of each other and so far down, in mm, and so many in a row. */
	private record Rows(double right, double down, int each) {

		/** About as wide as high in all, with room for the longest line. */
		static Rows of(Box whole, Box text, int now, int longest, int count) {
			double growth = text.width() * Math.max(0, (double) longest / Math.max(1, now) - 1);
			double right = Math.max(whole.width(), text.width() + growth) + GAP;
			double down = whole.height() + GAP;
			return new Rows(right, down, (int) Math.max(1, Math.round(Math.sqrt(count * down / right))));
		}
	}

	/**
	 * @param elements what is copied, the wording among them
	 * @param lines    what is said, see {@link #lines(String)}
	 * @param whole    how far all that is copied reaches
	 * @param text     how far the wording reaches as it is
	 */
	public RepeatForLines(List<? extends Element> elements, Wording wording, List<String> lines, Box whole, Box text) {
		super(NLS.bind(Messages.RepeatForLines_name, lines.size()));
		this.elements = elements.stream().<Element>map(element -> element).distinct().toList();
		this.wording = wording;
		this.lines = List.copyOf(lines);
		this.rows = Rows.of(whole, text, widest(LetterMarks.textOf(wording)),
				lines.stream().mapToInt(RepeatForLines::widest).max().orElse(0), lines.size());
	}

	/** The lines of a list as it was typed or pasted, without empty ones. What a tab parts stands in lines of its own. */
	public static List<String> lines(String list) {
		return list.lines().map(String::strip).filter(line -> !line.isEmpty())
				.map(line -> line.replaceAll("\\h*\t\\h*", "\n")).toList(); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static int widest(String text) {
		return text.lines().mapToInt(String::length).max().orElse(0);
	}

	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(elements) && elements.contains(wording) && !lines.isEmpty() && lines.size() <= MOST
				&& (lines.size() > 1 || !Objects.equals(lines.get(0), wording.getText()))
				&& withFollowers(elements).stream().allMatch(Targets::free);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return List.of(Jobs.jobOf(wording));
	}

	@Override
	protected void change() {
		List<Element> originals = withFollowers(elements);
		for (int i = 1; i < lines.size(); i++) {
			Map<Element, Element> laid = CopiedElements.lay(originals, i % rows.each * rows.right,
					i / rows.each * rows.down);
			say((Wording) laid.get(wording), lines.get(i));
			copies.addAll(laid.values());
		}
		say(wording, lines.get(0));
	}

	private static void say(Wording wording, String line) {
		LetterMarks.retext(wording, line, TextChange.between(LetterMarks.textOf(wording), line));
	}

	/** Elements of a job with what follows them and nothing else, as all of it is copied. */
	public static List<Element> withFollowers(List<? extends Element> elements) {
		Set<Element> all = new LinkedHashSet<>(elements);
		List<Element> followers = elements.isEmpty() ? List.of() : Targets.followers(Jobs.jobOf(elements.get(0)));
		while (all.addAll(followers.stream().filter(each -> isLedBy(all, each)).toList())) {
			// what follows a follower comes along too
		}
		return List.copyOf(all);
	}

	private static boolean isLedBy(Set<Element> all, Element follower) {
		List<Element> sources = Jobs.sources(follower);
		return !sources.isEmpty() && all.containsAll(sources);
	}

	/** The copies, without the elements that they are copies of; empty before the edit is applied. */
	public List<Element> copies() {
		return List.copyOf(copies);
	}
}
