package org.frisket.editing.shapes;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.ObjDoubleConsumer;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

import org.eclipse.emf.ecore.EObject;
import org.frisket.editing.RecordingEdit;
import org.frisket.editing.internal.Targets;
import org.frisket.model.Element;
import org.frisket.model.WeedLines;

/** Changes where weed lines run, and around what. */
public final class ChangeWeedLines extends RecordingEdit {

	private final Set<WeedLines> lines;
	private final Predicate<WeedLines> differs;
	private final Consumer<WeedLines> change;

	private ChangeWeedLines(String name, Collection<WeedLines> lines, Predicate<WeedLines> differs,
			Consumer<WeedLines> change) {
		super(name);
		this.lines = new LinkedHashSet<>(lines);
		this.differs = differs;
		this.change = change;
	}

	/** Of the box from the elements, in mm; above 0. */
	public static ChangeWeedLines margin(List<WeedLines> lines, double margin) {
		return number(Messages.ChangeWeedLines_margin, lines, margin, margin > 0, WeedLines::getMargin,
				WeedLines::setMargin);
	}

	/** Whether lines run between parts. */
	public static ChangeWeedLines between(List<WeedLines> lines, boolean between) {
		return new ChangeWeedLines(Messages.ChangeWeedLines_between, lines, each -> each.isBetween() != between,
				each -> each.setBetween(between));
	}

	/** The widest strip in mm; 0 for none. */
	public static ChangeWeedLines spacing(List<WeedLines> lines, double spacing) {
		return number(Messages.ChangeWeedLines_spacing, lines, spacing, spacing >= 0, WeedLines::getSpacing,
				WeedLines::setSpacing);
	}

	/** How far they keep from the elements, in mm. */
	public static ChangeWeedLines clearance(List<WeedLines> lines, double clearance) {
		return number(Messages.ChangeWeedLines_clearance, lines, clearance, clearance >= 0, WeedLines::getClearance,
				WeedLines::setClearance);
	}

	/** Which elements they go round; never themselves. */
	public static ChangeWeedLines around(WeedLines lines, Collection<? extends Element> elements) {
		List<Element> wanted = List.copyOf(new LinkedHashSet<Element>(elements));
		return new ChangeWeedLines(Messages.ChangeWeedLines_around, List.of(lines),
				each -> !wanted.isEmpty() && !Set.copyOf(wanted).equals(Set.copyOf(each.getAround()))
						&& Targets.mayFollow(each, wanted),
				each -> Targets.follow(each, wanted));
	}

	private static ChangeWeedLines number(String name, List<WeedLines> lines, double value, boolean valid,
			ToDoubleFunction<WeedLines> now, ObjDoubleConsumer<WeedLines> set) {
		return new ChangeWeedLines(name, lines, each -> valid && Double.isFinite(value) && value != now.applyAsDouble(each),
				each -> set.accept(each, value));
	}

	@Override
	public boolean canApply() {
		return Targets.freeInOneJob(lines) && lines.stream().anyMatch(differs);
	}

	@Override
	protected Collection<? extends EObject> scope() {
		return lines;
	}

	@Override
	protected void change() {
		lines.stream().filter(differs).forEach(change);
	}
}
