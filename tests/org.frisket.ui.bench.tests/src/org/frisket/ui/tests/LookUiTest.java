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
				if (data.getAlpha(x, y) == 255 && Contrast.luminance(rgb) < 0.8) {
					counts.merge(rgb, 1, Integer::sum);
				}
			}
		}
		return Contrast.ratio(Collections.max(counts.entrySet(), Map.Entry.comparingByValue()).getKey(), ground);
	}
}
