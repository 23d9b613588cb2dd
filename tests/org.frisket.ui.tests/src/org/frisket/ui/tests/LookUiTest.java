package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.HashMap;
import java.util.Map;

import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.frisket.ui.Icon;
import org.frisket.ui.ThemeColour;
import org.junit.jupiter.api.Test;

/** Icons and colours as the workbench gives them. */
class LookUiTest {

	@Test
	void everyIconIsDrawnSharpAtEveryZoom() {
		for (Icon icon : Icon.values()) {
			for (int zoom : new int[] { 100, 150, 200 }) {
				ImageData data = icon.descriptor().getImageData(zoom);
				assertNotNull(data, icon + " at " + zoom);
				assertEquals(16 * zoom / 100, data.width, icon + " at " + zoom);
			}
		}
	}

	@Test
	void everyColourIsDefinedByTheTheme() {
		for (ThemeColour colour : ThemeColour.values()) {
			assertTrue(JFaceResources.getColorRegistry().hasValueFor(colour.id()), colour.id());
		}
	}

	/** The window grounds of GTK's light and dark theme. */
	@Test
	void iconsStandOutFromLightAndDarkGrounds() {
		for (RGB ground : new RGB[] { new RGB(246, 245, 244), new RGB(53, 53, 53) }) {
			for (Icon icon : Icon.values()) {
				assertTrue(inkContrast(icon.descriptor().getImageData(200), ground) >= 3, icon + " on " + ground);
			}
		}
	}

	/** Contrast of the colour that covers most pixels, paper apart. */
	private static double inkContrast(ImageData data, RGB ground) {
		Map<RGB, Integer> counts = new HashMap<>();
		for (int y = 0; y < data.height; y++) {
			for (int x = 0; x < data.width; x++) {
				RGB rgb = data.palette.getRGB(data.getPixel(x, y));
				if (data.getAlpha(x, y) == 255 && luminance(rgb) < 0.8) {
					counts.merge(rgb, 1, Integer::sum);
				}
			}
		}
		return contrast(Collections.max(counts.entrySet(), Map.Entry.comparingByValue()).getKey(), ground);
	}

	@Test
	void linesAndTextStandOutFromTheSheet() {
		RGB sheet = ThemeColour.BENCH_SHEET.colour().getRGB();
		for (ThemeColour colour : ThemeColour.values()) {
			if (colour.name().startsWith("OPERATION") || colour.name().startsWith("FINDING")
					|| colour == ThemeColour.BENCH_SELECTION || colour == ThemeColour.BENCH_REMOVED) {
				assertTrue(contrast(colour.colour().getRGB(), sheet) >= 3, colour.id());
			}
		}
		assertTrue(contrast(ThemeColour.BENCH_HINT.colour().getRGB(), sheet) >= 4.5);
		assertTrue(contrast(ThemeColour.BENCH_INK.colour().getRGB(), sheet) >= 4.5);
		assertTrue(contrast(ThemeColour.BENCH_TAG_TEXT.colour().getRGB(),
				ThemeColour.BENCH_TAG.colour().getRGB()) >= 4.5);
	}

	/** Contrast ratio of WCAG 2.1, from 1 to 21. */
	private static double contrast(RGB a, RGB b) {
		double la = luminance(a);
		double lb = luminance(b);
		return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
	}

	private static double luminance(RGB rgb) {
		return 0.2126 * linear(rgb.red) + 0.7152 * linear(rgb.green) + 0.0722 * linear(rgb.blue);
	}

	private static double linear(int channel) {
		double c = channel / 255.0;
		return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
	}
}
