package org.frisket.prepare.checks;

import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;

import org.frisket.editing.Edit;
import org.frisket.model.Element;
import org.frisket.model.Job;
import org.frisket.model.Jobs;

/**
 * A change of the job that rids it of a finding. It is made from a job that was prepared, which is mostly a copy, and so
 * makes its edit anew for each job it is applied to.
 */
public final class Cure {

	private final String name;
	private final Function<Job, Optional<Edit>> making;

	private Cure(String name, Function<Job, Optional<Edit>> making) {
		this.name = Objects.requireNonNull(name);
		this.making = making;
	}

	/** @param making gives the edit for a job, or nothing if that has no longer what is to be cured */
	public static Cure of(String name, Function<Job, Optional<Edit>> making) {
		return new Cure(name, making);
	}

	/**
	 * One that changes a single element.
	 *
	 * @param element its id
	 * @param type    what it has to be
	 */
	public static <E extends Element> Cure of(String name, String element, Class<E> type, Function<E, Edit> making) {
		return new Cure(name, job -> Jobs.element(job, element).filter(type::isInstance).map(type::cast).map(making));
	}

	/** What it does, as an order: "Set it 24 mm high". */
	public String name() {
		return name;
	}

	/** The edit for a job; empty if that has no longer what is to be cured. */
	public Optional<Edit> edit(Job job) {
		return making.apply(job);
	}

	@Override
	public String toString() {
		return name;
	}
}
