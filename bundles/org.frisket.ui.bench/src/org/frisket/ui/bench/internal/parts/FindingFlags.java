package org.frisket.ui.bench.internal.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;

import org.eclipse.draw2d.IFigure;
import org.eclipse.osgi.util.NLS;
import org.frisket.prepare.Finding;
import org.frisket.ui.bench.MeasureText;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.internal.canvas.CanvasZoom;
import org.frisket.ui.bench.internal.figures.FlagFigure;

/** A flag for each finding, numbered in the order of the findings. */
final class FindingFlags {

	/** More would hide the job, and whoever has so many findings looks at the list. */
	private static final int MOST = 200;

	private final IFigure layer;
	private final CanvasZoom zoom;
	private final List<FlagFigure> flags = new ArrayList<>();
	private List<Finding> findings = List.of();
	private Function<Finding, String> cures = Finding::cure;
	private Finding raised;
	private int hovered = -1;

	FindingFlags(IFigure layer, CanvasZoom zoom) {
		this.layer = layer;
		this.zoom = zoom;
	}

	void plant(List<Finding> newFindings) {
		if (findings.equals(newFindings)) {
			return;
		}
		remove();
		findings = newFindings;
		for (int i = 0; i < Math.min(findings.size(), MOST); i++) {
			Finding finding = findings.get(i);
			FlagFigure flag = new FlagFigure(zoom, finding.place(), colour(finding), String.valueOf(i + 1),
					measure(finding));
			layer.add(flag);
			flags.add(flag);
		}
		say(cures);
		raise(raised);
	}

	/** Has one flag say its measure and no other; null for none. */
	void raise(Finding finding) {
		raised = finding;
		for (int i = 0; i < flags.size(); i++) {
			boolean up = Objects.equals(findings.get(i), finding);
			flags.get(i).setRaised(up);
			if (up) {
				// in front of the others
				layer.remove(flags.get(i));
				layer.add(flags.get(i));
			}
		}
	}

	/** What is said of the cure of each. */
	void say(Function<Finding, String> newCures) {
		cures = newCures;
		for (int i = 0; i < flags.size(); i++) {
			flags.get(i).setCure(cures.apply(findings.get(i)));
		}
	}

	/** The finding whose flag is at a place in pixels of the bench, the foremost if there are several; or null. */
	Finding at(int x, int y) {
		int index = indexAt(x, y);
		return index < 0 ? null : findings.get(index);
	}

	private int indexAt(int x, int y) {
		int found = -1;
		for (int i = 0; i < flags.size(); i++) {
			if (flags.get(i).isAt(x, y) && (found < 0 || isBefore(i, found))) {
				found = i;
			}
		}
		return found;
	}

	private boolean isBefore(int i, int other) {
		List<?> order = layer.getChildren();
		return order.indexOf(flags.get(i)) > order.indexOf(flags.get(other));
	}

	/** Has the flag at a place say its measure and its cure, and no other. */
	void hover(int x, int y) {
		int index = indexAt(x, y);
		if (index == hovered) {
			return;
		}
		if (hovered >= 0 && hovered < flags.size()) {
			flags.get(hovered).setHovered(false);
		}
		hovered = index;
		if (index >= 0) {
			flags.get(index).setHovered(true);
			layer.remove(flags.get(index));
			layer.add(flags.get(index));
		}
	}

	List<FlagFigure> figures() {
		return List.copyOf(flags);
	}

	void remove() {
		flags.forEach(layer::remove);
		flags.clear();
		hovered = -1;
		findings = List.of();
	}

	private static ThemeColour colour(Finding finding) {
		return switch (finding.severity()) {
		case BLOCKING -> ThemeColour.FINDING_BLOCKING;
		case CAUTION -> ThemeColour.FINDING_CAUTION;
		case NOTE -> ThemeColour.FINDING_NOTE;
		};
	}

	private static String measure(Finding finding) {
		if (finding.measured().isEmpty() || finding.limit().isEmpty()) {
			return finding.message();
		}
		return NLS.bind(Messages.FindingFlags_measure, MeasureText.measured(finding),
				MeasureText.limit(finding));
	}
}
