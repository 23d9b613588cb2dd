package org.frisket.ui.views.internal.properties;

import java.util.Collection;
import java.util.Objects;

import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.frisket.model.Element;
import org.frisket.model.Jobs;
import org.frisket.model.Layer;
import org.frisket.model.Mat;
import org.frisket.ui.ThemeColour;

/** The layer a mat is cut from, by its colour and its name; in bold where the mat itself is selected. */
final class MatHeading {

	private static final int CHIP_PX = 14;
	private static final int INDENT_PX = 6;

	private final Mat mat;
	private final Canvas chip;
	private final Label name;

	MatHeading(Composite parent, Mat mat, int span) {
		this.mat = mat;
		Composite line = new Composite(parent, SWT.NONE);
		GridLayoutFactory.fillDefaults().numColumns(2).applyTo(line);
		GridDataFactory.fillDefaults().grab(true, false).span(span, 1).indent(0, INDENT_PX).align(SWT.FILL, SWT.CENTER)
				.applyTo(line);
		chip = new Canvas(line, SWT.NONE);
		chip.addListener(SWT.Paint, this::paint);
		GridDataFactory.fillDefaults().hint(CHIP_PX, CHIP_PX).align(SWT.LEFT, SWT.CENTER).applyTo(chip);
		name = new Label(line, SWT.NONE);
		GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(name);
	}

	void show(Collection<Element> selected) {
		Layer layer = Jobs.layerOf(mat);
		name.setText(layer == null ? "" : Objects.requireNonNullElse(layer.getName(), "")); //$NON-NLS-1$ //$NON-NLS-2$
		name.setFont(selected.contains(mat) ? JFaceResources.getFontRegistry().getBold(JFaceResources.DEFAULT_FONT)
				: JFaceResources.getDefaultFont());
		chip.redraw();
	}

	private void paint(Event event) {
		Layer layer = Jobs.layerOf(mat);
		String colour = layer == null ? null : layer.getColour();
		event.gc.setBackground(colour != null && colour.matches("#[0-9a-fA-F]{6}") ? stock(colour) //$NON-NLS-1$
				: ThemeColour.BENCH_STOCK.colour());
		event.gc.fillRectangle(0, 0, CHIP_PX, CHIP_PX);
		event.gc.setForeground(ThemeColour.BENCH_SHEET_EDGE.colour());
		event.gc.drawRectangle(0, 0, CHIP_PX - 1, CHIP_PX - 1);
	}

	private static Color stock(String colour) {
		int rgb = Integer.parseInt(colour.substring(1), 16);
		return new Color(new RGB(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff));
	}
}
