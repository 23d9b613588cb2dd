package org.frisket.orders.compare;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.DoubleFunction;
import java.util.function.Function;

import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobFile;

/**
 * What two desks have made of one job, compared with what it was when both had it. What is told from each other by ids
 * is compared one by one, and of each all that the model knows of it. What one side alone has changed needs no choice.
 * Where both have, what is in the order book holds unless the user says otherwise: it is what others go by already.
 */
public final class JobComparison {

	private final Snapshot base;
	private final Snapshot mine;
	private final Snapshot theirs;
	private final Set<String> touched;
	/** What things of this desk were called, by what they are called here. */
	private final Map<String, String> renamed;

	private JobComparison(Job base, Job mine, Job theirs) {
		renamed = ApartIds.make(base, mine, theirs);
		this.base = Snapshot.of(base);
		this.mine = Snapshot.of(mine);
		this.theirs = Snapshot.of(theirs);
		touched = merging(row -> Side.THEIRS).touched();
	}

	/**
	 * Compares copies of the jobs, which stay as they are.
	 *
	 * @param base   the job as it was taken out of the order book here
	 * @param mine   what has become of it here
	 * @param theirs what is in the order book now
	 * @throws IOException if one of them could not be written; the message is for people
	 */
	public static JobComparison of(Job base, Job mine, Job theirs) throws IOException {
		return new JobComparison(copy(base), copy(mine), copy(theirs));
	}

	/** With what this version does not know of it. */
	static Job copy(Job job) throws IOException {
		return JobFile.load(JobFile.toBytes(job), String.valueOf(job.getNumber()));
	}

	Merging merging(Function<String, Side> choices) {
		return new Merging(base, mine, theirs, choices).run();
	}

	Job theirs() {
		return job(Side.THEIRS);
	}

	/**
	 * One side as it is compared: what both have added under one id bears two here, as in {@link Row#element()}. It is
	 * not to be changed.
	 */
	public Job job(Side side) {
		return (Job) (side == Side.MINE ? mine : theirs).nodes().get("Job").object();
	}

	Map<String, String> renamed() {
		return renamed;
	}

	/** Whether there is anything to choose. */
	public boolean touches() {
		return !touched.isEmpty();
	}

	/** What either side has done, the job itself first, then what it holds from the lowest layer to the topmost. */
	public List<Row> rows() {
		return rows(mm -> ChangeWords.number(mm) + " mm");
	}

	/** @param length how a length in mm is written, with its unit */
	public List<Row> rows(DoubleFunction<String> length) {
		Map<String, List<String>> keys = new LinkedHashMap<>();
		for (Snapshot each : List.of(theirs, mine, base)) {
			each.nodes().values().forEach(node -> keys.computeIfAbsent(node.row(), row -> new ArrayList<>()));
		}
		Set<String> all = new LinkedHashSet<>();
		List.of(theirs, mine, base).forEach(each -> all.addAll(each.nodes().keySet()));
		all.forEach(key -> keys.get(any(key).row()).add(key));
		List<Row> rows = new ArrayList<>();
		keys.forEach((row, nodes) -> {
			Difference here = new ChangeWords(base, mine, length).of(nodes);
			Difference there = new ChangeWords(base, theirs, length).of(nodes);
			if (here.isAny() || there.isAny() || touched.contains(row)) {
				Node node = any(nodes.get(0));
				rows.add(new Row(row, ChangeWords.subject(node, nodes.size() > 1 || !row.equals(node.key())),
						node.object() instanceof Element element ? Optional.of(element.getId()) : Optional.empty(),
						here, there,
						touched.contains(row)));
			}
		});
		return rows;
	}

	private Node any(String key) {
		return mine.node(key).or(() -> theirs.node(key)).or(() -> base.node(key)).orElseThrow();
	}
}
