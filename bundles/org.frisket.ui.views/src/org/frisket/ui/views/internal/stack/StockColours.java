package org.frisket.ui.views.internal.stack;

import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Objects;
import java.util.Set;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.ColorDialog;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.frisket.model.FrisketFactory;
import org.frisket.model.Layer;
import org.frisket.ui.ThemeColour;

/** The colours that a layer can be shown in: those of the job's other layers, or any other. */
final class StockColours {

	private static final int SWATCH_PX = 16;

	private final StackCanvas canvas;
	private final Layer layer;

	StockColours(StackCanvas canvas, Layer layer) {
		this.canvas = canvas;
		this.layer = layer;
	}

	/** Opens them under the sheet. */
	void open() {
		Menu menu = new Menu(canvas.getShell(), SWT.POP_UP);
		fill(menu);
		menu.addListener(SWT.Hide, event -> canvas.getDisplay().asyncExec(menu::dispose));
		Rectangle sheet = canvas.sheetOf(new Row(layer, null));
		Point corner = canvas.toDisplay(sheet.x, sheet.y + sheet.height);
		menu.setLocation(corner);
		menu.setVisible(true);
	}

	/** One item for each colour, and after them those that ask for another or give it up. */
	void fill(Menu menu) {
		Set<String> colours = new LinkedHashSet<>();
		canvas.bench().job().getLayers().stream().map(Layer::getColour).filter(Objects::nonNull)
				.map(colour -> colour.toLowerCase(Locale.ROOT)).forEach(colours::add);
		for (String colour : colours) {
			MenuItem item = item(menu, SWT.RADIO, colour, () -> canvas.actions().colour(layer, colour));
			item.setSelection(colour.equalsIgnoreCase(layer.getColour()));
			Image swatch = swatch(colour);
			item.setImage(swatch);
			item.addListener(SWT.Dispose, event -> swatch.dispose());
		}
		new MenuItem(menu, SWT.SEPARATOR);
		item(menu, SWT.PUSH, Messages.StockColours_other, this::ask);
		item(menu, SWT.PUSH, Messages.StockColours_none, () -> canvas.actions().colour(layer, null))
				.setEnabled(layer.getColour() != null);
	}

	private static MenuItem item(Menu menu, int style, String text, Runnable action) {
		MenuItem item = new MenuItem(menu, style);
		item.setText(text);
		item.addListener(SWT.Selection, event -> {
			if (style != SWT.RADIO || item.getSelection()) {
				action.run();
			}
		});
		return item;
	}

	private Image swatch(String colour) {
		Layer sample = FrisketFactory.INSTANCE.createLayer();
		sample.setColour(colour);
		Image image = new Image(canvas.getDisplay(), SWATCH_PX, SWATCH_PX);
		GC gc = new GC(image);
		gc.setBackground(RowMarks.stock(sample));
		gc.fillRectangle(0, 0, SWATCH_PX, SWATCH_PX);
		gc.setForeground(ThemeColour.BENCH_SHEET_EDGE.colour());
		gc.drawRectangle(0, 0, SWATCH_PX - 1, SWATCH_PX - 1);
		gc.dispose();
		return image;
	}

	private void ask() {
		ColorDialog dialog = new ColorDialog(canvas.getShell());
		dialog.setText(Messages.StockColours_title);
		dialog.setRGB(RowMarks.stock(layer).getRGB());
		RGB chosen = dialog.open();
		if (chosen != null) {
			canvas.actions().colour(layer,
					String.format(Locale.ROOT, "#%02x%02x%02x", chosen.red, chosen.green, chosen.blue)); //$NON-NLS-1$
		}
	}
}
