package org.frisket.ui.material.internal.shelf;

import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.function.Supplier;

import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.ColorDialog;
import org.eclipse.swt.widgets.Composite;
import org.frisket.material.shelf.PaperColour;
import org.frisket.ui.ThemeColour;

/** Shows what colour a text means, and lets another be picked, which is written behind its words. */
final class ColourButton {

	private static final int SIZE_PX = 16;

	private final Button button;
	private final Supplier<String> text;
	private Image image;

	ColourButton(Composite parent, Supplier<String> text, Consumer<String> sink) {
		this.text = text;
		button = new Button(parent, SWT.PUSH);
		button.setToolTipText(Messages.ColourButton_pick);
		button.addListener(SWT.Selection, event -> {
			ColorDialog dialog = new ColorDialog(button.getShell());
			dialog.setText(Messages.ColourButton_pick);
			PaperColour.of(text.get()).ifPresent(rgb -> dialog.setRGB(rgb(rgb)));
			RGB chosen = dialog.open();
			if (chosen != null) {
				String words = text.get().replaceAll("#[0-9a-fA-F]{6}", "").strip(); //$NON-NLS-1$ //$NON-NLS-2$
				sink.accept((words + ' ' + PaperColour.hex(chosen.red << 16 | chosen.green << 8 | chosen.blue)).strip());
			}
		});
		button.addListener(SWT.Dispose, event -> drop());
	}

	private static RGB rgb(int value) {
		return new RGB(value >> 16, value >> 8 & 0xff, value & 0xff);
	}

	void refresh() {
		OptionalInt colour = PaperColour.of(text.get());
		Image before = image;
		image = new Image(button.getDisplay(), SIZE_PX, SIZE_PX);
		GC gc = new GC(image);
		gc.setBackground(colour.isPresent() ? new Color(rgb(colour.getAsInt())) : ThemeColour.BENCH_STOCK.colour());
		gc.fillRectangle(0, 0, SIZE_PX, SIZE_PX);
		gc.setForeground(ThemeColour.BENCH_SHEET_EDGE.colour());
		gc.drawRectangle(0, 0, SIZE_PX - 1, SIZE_PX - 1);
		if (colour.isEmpty()) {
			gc.drawLine(0, SIZE_PX - 1, SIZE_PX - 1, 0);
		}
		gc.dispose();
		button.setImage(image);
		if (before != null) {
			before.dispose();
		}
	}

	private void drop() {
		if (image != null) {
			image.dispose();
		}
	}
}
