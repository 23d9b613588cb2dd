package org.frisket.ui.tests;

import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.Platform;
import org.eclipse.jface.resource.StringConverter;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import org.frisket.ui.ThemeColour;

/**
 * The colours of the theme as they come out under one appearance of the window system, worked out from their definitions:
 * a value, the name of a colour of the system, or the middle of two of these.
 */
record Appearance(String name, Map<String, RGB> system) {

	/** As GTK's own theme has them. */
	static final Appearance LIGHT = of("light", new RGB(246, 245, 244), new RGB(46, 52, 54), new RGB(255, 255, 255),
			new RGB(173, 169, 165));
	static final Appearance DARK = of("dark", new RGB(53, 53, 53), new RGB(238, 238, 236), new RGB(45, 45, 45),
			new RGB(38, 38, 38));

	private static final Map<String, IConfigurationElement> DEFINITIONS = Stream
			.of(Platform.getExtensionRegistry().getConfigurationElementsFor("org.eclipse.ui.themes"))
			.filter(element -> element.getName().equals("colorDefinition"))
			.filter(element -> element.getContributor().getName().equals("org.frisket.ui"))
			.collect(Collectors.toMap(element -> element.getAttribute("id"), element -> element));

	private static Appearance of(String name, RGB ground, RGB words, RGB list, RGB shadow) {
		return new Appearance(name, Map.of("COLOR_WIDGET_BACKGROUND", ground, "COLOR_WIDGET_FOREGROUND", words,
				"COLOR_LIST_BACKGROUND", list, "COLOR_WIDGET_NORMAL_SHADOW", shadow));
	}

	/** What the window system has now. */
	static Appearance running() {
		return of("running", seen(SWT.COLOR_WIDGET_BACKGROUND), seen(SWT.COLOR_WIDGET_FOREGROUND),
				seen(SWT.COLOR_LIST_BACKGROUND), seen(SWT.COLOR_WIDGET_NORMAL_SHADOW));
	}

	private static RGB seen(int colour) {
		return Display.getCurrent().getSystemColor(colour).getRGB();
	}

	RGB of(ThemeColour colour) {
		IConfigurationElement definition = DEFINITIONS.get(colour.id());
		String value = definition.getAttribute("value");
		if (value != null) {
			return of(value);
		}
		IConfigurationElement[] ends = definition.getChildren("colorFactory")[0].getChildren("parameter");
		return Contrast.over(of(ends[0].getAttribute("value")), of(ends[1].getAttribute("value")), 0.5);
	}

	private RGB of(String value) {
		return value.contains(",") ? StringConverter.asRGB(value) : system.get(value);
	}

	/** The ground of the window. */
	RGB window() {
		return system.get("COLOR_WIDGET_BACKGROUND");
	}

	/** The ground of lists and of fields to type in. */
	RGB list() {
		return system.get("COLOR_LIST_BACKGROUND");
	}
}
