package org.frisket.ui.material.internal.machines;

import java.text.NumberFormat;
import java.util.Optional;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.frisket.material.tools.Edge;
import org.frisket.material.tools.Tool;
import org.frisket.material.trials.BladeWear;
import org.frisket.ui.ThemeColour;

/** How far an edge is worn: a bar, the metres in words, and a warning when it is time. */
final class WearBar extends Composite {

	private static final int HEIGHT_PX = 12;
	private static final int WIDTH_PX = 240;
	private static final int NOTE_PX = 440;
	private final Canvas bar;
	private final Label words;
	private final Label warning;
	private Edge edge;

	WearBar(Composite parent) {
		super(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(this);
		bar = new Canvas(this, SWT.DOUBLE_BUFFERED);
		GridDataFactory.swtDefaults().hint(WIDTH_PX, HEIGHT_PX).applyTo(bar);
		bar.addListener(SWT.Paint, event -> paint(event.gc));
		words = new Label(this, SWT.NONE);
		warning = new Label(this, SWT.WRAP);
		GridDataFactory.fillDefaults().span(2, 1).hint(NOTE_PX, SWT.DEFAULT).applyTo(warning);
	}

	void show(Tool tool) {
		edge = tool.edge().orElseThrow();
		NumberFormat metres = NumberFormat.getIntegerInstance();
		words.setText(NLS.bind(Messages.WearBar_metres, metres.format(edge.wornMetres()), metres.format(edge.dullAfter())));
		Optional<String> said = BladeWear.warning(tool, 0, 1);
		warning.setForeground(ThemeColour.FINDING_MESSAGE.colour());
		warning.setText(said.map(text -> text.replace("&", "&&")).orElse(Messages.WearBar_how)); //$NON-NLS-1$ //$NON-NLS-2$
		if (said.isEmpty()) {
			warning.setForeground(null);
		}
		bar.redraw();
	}

	private void paint(GC gc) {
		Rectangle area = bar.getClientArea();
		gc.setForeground(bar.getForeground());
		if (edge != null) {
			gc.setBackground((edge.state() == Edge.State.SHARP ? ThemeColour.BENCH_ACCENT : ThemeColour.FINDING_MESSAGE)
					.colour());
			gc.fillRectangle(0, 0, (int) Math.round(Math.min(1, edge.share()) * area.width), area.height);
		}
		gc.drawRectangle(0, 0, area.width - 1, area.height - 1);
	}
}
