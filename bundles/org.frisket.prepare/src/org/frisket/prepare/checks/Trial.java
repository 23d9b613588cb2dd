package org.frisket.prepare.checks;

import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Supplier;

import org.frisket.editing.Edit;
import org.frisket.geometry.Monitor;
import org.frisket.geometry.Tolerance;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.JobHome;
import org.frisket.model.Jobs;
import org.frisket.prepare.Finding;
import org.frisket.prepare.JobPreparer;
import org.frisket.prepare.PreparedElement;
import org.frisket.prepare.PreparedJob;
import org.frisket.typography.source.FontLibrary;

/** A prepared job on whose copies cures are tried. For one thread. */
public final class Trial {

	private final PreparedJob job;
	private final JobPreparer preparer;
	private final FontLibrary fonts;
	private final LayerLimits limits;
	private final Tolerance tolerance;
	private final Monitor monitor;
	private final BiFunction<PreparedJob, String, List<Finding>> makeready;
	private final Map<Object, Object> known = new HashMap<>();
	private final Map<Cure, Map<String, Optional<List<Finding>>>> tried = new IdentityHashMap<>();

	/** @param makeready finds what is wrong with an element, given by its id */
	public Trial(PreparedJob job, JobPreparer preparer, FontLibrary fonts, LayerLimits limits, Tolerance tolerance,
			Monitor monitor, BiFunction<PreparedJob, String, List<Finding>> makeready) {
		this.job = job;
		this.preparer = preparer;
		this.fonts = fonts;
		this.limits = limits;
		this.tolerance = tolerance;
		this.monitor = monitor;
		this.makeready = makeready;
	}

	/** What the stock of the element allows that a finding is about. */
	public Limits limits(Finding finding) {
		return element(finding).map(limits::of).orElse(Limits.CARD);
	}

	public Tolerance tolerance() {
		return tolerance;
	}

	public Monitor monitor() {
		return monitor;
	}

	public FontLibrary fonts() {
		return fonts;
	}

	/** The element a finding is about, of the job as it was prepared. */
	public Optional<Element> element(Finding finding) {
		return Jobs.element(job.job(), finding.element());
	}

	/** What that element came to. */
	public Optional<PreparedElement> prepared(Finding finding) {
		return job.element(finding.element());
	}

	/** What else the layer of that element shows. */
	public List<PreparedElement> neighbours(Finding finding) {
		return job.around(finding.element()).layers().stream().flatMap(layer -> layer.shown().stream())
				.filter(prepared -> !prepared.element().getId().equals(finding.element())).toList();
	}

	/** Everything found on an element as the job is. */
	public List<Finding> before(String element) {
		record Key(String element) {
		}
		return once(new Key(element), () -> found(job, element));
	}

	/** Everything found on an element after a cure; empty if the cure cannot be applied, no findings if all is well. */
	public Optional<List<Finding>> after(Cure cure, String element) {
		return tried.computeIfAbsent(cure, key -> new HashMap<>()).computeIfAbsent(element, id -> {
			Job copy = JobHome.copy(job.job());
			Optional<Edit> edit = cure.edit(copy).filter(Edit::canApply);
			edit.ifPresent(Edit::apply);
			return edit.map(applied -> found(preparer.prepare(copy, tolerance, monitor), id));
		});
	}

	private List<Finding> found(PreparedJob prepared, String element) {
		return makeready.apply(prepared, element);
	}

	/** Whether a cure leaves fewer findings of this kind on the element, and makes no blocking ones. */
	public boolean heals(Cure cure, Finding finding) {
		List<Finding> before = before(finding.element());
		return after(cure, finding.element()).map(after -> alike(after, finding) < alike(before, finding)
				&& blocking(after) <= blocking(before)).orElse(false);
	}

	private static long alike(List<Finding> findings, Finding finding) {
		return findings.stream().filter(f -> f.id().equals(finding.id())).count();
	}

	private static long blocking(List<Finding> findings) {
		return findings.stream().filter(Finding::isBlocking).count();
	}

	/** What costs time, worked out for the first finding that asks, and known to the others of its element. */
	@SuppressWarnings("unchecked")
	public <T> T once(Object key, Supplier<T> computation) {
		if (!known.containsKey(key)) {
			known.put(key, computation.get());
		}
		return (T) known.get(key);
	}
}
