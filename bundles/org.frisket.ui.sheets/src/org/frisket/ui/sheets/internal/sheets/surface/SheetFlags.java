package org.frisket.ui.sheets.internal.sheets.surface;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import org.eclipse.draw2d.IFigure;
import org.eclipse.gef.EditPartViewer;
import org.eclipse.gef.LayerConstants;
import org.eclipse.gef.editparts.LayerManager;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.frisket.geometry.Point;
import org.frisket.model.Sheet;
import org.frisket.prepare.Finding;
import org.frisket.prepare.Severity;
import org.frisket.ui.ThemeColour;
import org.frisket.ui.bench.MeasureText;
import org.frisket.ui.bench.internal.figures.FlagFigure;

/** Numbered flags on what is wrong; the one under the pointer says what was measured, and a tip says it in full. */
public final class SheetFlags {

	/** A finding of a sheet. @param number on its flag */
	public record Planted(int number, Sheet sheet, Finding finding) {
	}

	/** Flag and what it stands for. */
	private record Flag(FlagFigure figure, Planted planted) {
	}

	private final SheetsSurface surface;
	private final EditPartViewer viewer;
	private final List<Flag> flags = new ArrayList<>();
	private Flag hovered;

	SheetFlags(SheetsSurface surface, EditPartViewer viewer) {
		this.surface = surface;
		this.viewer = viewer;
		viewer.getControl().addListener(SWT.MouseMove, this::hover);
	}

	/** Plants them in place of those before. */
	public void plant(List<Planted> all) {
		IFigure layer = LayerManager.Helper.find(viewer.getRootEditPart())
				.getLayer(LayerConstants.SCALED_FEEDBACK_LAYER);
		flags.forEach(flag -> layer.remove(flag.figure()));
		flags.clear();
		hovered = null;
		surface.canvas().setToolTipText(null);
		for (Planted planted : all) {
			Point corner = surface.spread().corner(planted.sheet());
			Finding finding = planted.finding();
			FlagFigure figure = new FlagFigure(surface.zoom(),
					new Point(corner.x() + finding.place().x(), corner.y() + finding.place().y()),
					colour(finding.severity()), String.valueOf(planted.number()), MeasureText.measured(finding));
			layer.add(figure);
			flags.add(new Flag(figure, planted));
		}
	}

	private static ThemeColour colour(Severity severity) {
		return switch (severity) {
		case BLOCKING -> ThemeColour.FINDING_BLOCKING;
		case CAUTION -> ThemeColour.FINDING_CAUTION;
		case NOTE -> ThemeColour.FINDING_NOTE;
		};
	}

	private void hover(Event event) {
		Optional<Flag> at = flags.stream().filter(flag -> flag.figure().isAt(event.x, event.y)).findFirst();
		Flag now = at.orElse(null);
		if (now == hovered) {
			return;
		}
		if (hovered != null) {
			hovered.figure().setHovered(false);
		}
		hovered = now;
		if (now != null) {
			now.figure().setHovered(true);
		}
		surface.canvas().setToolTipText(now == null ? null : text(now.planted()));
	}

	/** What is said of a finding in full. */
	public static String text(Planted planted) {
		Finding finding = planted.finding();
		String said = NLS.bind(Messages.SheetFlags_finding, new Object[] { planted.number(), finding.message() });
		if (finding.measured().isPresent() && finding.limit().isPresent()) {
			said = NLS.bind(Messages.SheetFlags_measured,
					new Object[] { said, MeasureText.measured(finding), MeasureText.limit(finding) });
		}
		return finding.cure().isEmpty() ? said : said + '\n' + finding.cure();
	}

	/** What is planted now, in the order of numbers. */
	public List<Planted> planted() {
		return flags.stream().map(Flag::planted).toList();
	}
}
