package org.frisket.ui;

import org.eclipse.jface.resource.ColorRegistry;
import org.eclipse.jface.resource.JFaceResources;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.widgets.Display;

/** The named colours of the theme. No part of the screen uses any other, the stock's own colours apart. */
public enum ThemeColour {

	BENCH_DESK("org.frisket.bench.desk", SWT.COLOR_WIDGET_BACKGROUND),
	BENCH_SHEET("org.frisket.bench.sheet", SWT.COLOR_LIST_BACKGROUND),
	BENCH_SHEET_EDGE("org.frisket.bench.sheetEdge", SWT.COLOR_WIDGET_NORMAL_SHADOW),
	BENCH_SHADOW("org.frisket.bench.shadow", SWT.COLOR_WIDGET_DARK_SHADOW),
	BENCH_STOCK("org.frisket.bench.stock", SWT.COLOR_WIDGET_LIGHT_SHADOW),
	BENCH_SELECTION("org.frisket.bench.selection", SWT.COLOR_LIST_SELECTION),
	BENCH_INK("org.frisket.bench.ink", SWT.COLOR_LIST_FOREGROUND),
	BENCH_REMOVED("org.frisket.bench.removed", SWT.COLOR_LIST_FOREGROUND),
	BENCH_TAG("org.frisket.bench.tag", SWT.COLOR_INFO_BACKGROUND),
	BENCH_TAG_TEXT("org.frisket.bench.tagText", SWT.COLOR_INFO_FOREGROUND),
	BENCH_HINT("org.frisket.bench.hint", SWT.COLOR_WIDGET_FOREGROUND),
	BENCH_RULER("org.frisket.bench.ruler", SWT.COLOR_WIDGET_BACKGROUND),
	BENCH_RULER_MARK("org.frisket.bench.rulerMark", SWT.COLOR_WIDGET_FOREGROUND),
	/** The accent on grounds that follow the window system's theme. */
	BENCH_ACCENT("org.frisket.bench.accent", SWT.COLOR_LIST_SELECTION),
	BENCH_GUIDE("org.frisket.bench.guide", SWT.COLOR_LIST_SELECTION),
	BENCH_GRID("org.frisket.bench.grid", SWT.COLOR_WIDGET_NORMAL_SHADOW),

	OPERATION_CUT("org.frisket.operation.cut", SWT.COLOR_LIST_FOREGROUND),
	OPERATION_KISS_CUT("org.frisket.operation.kissCut", SWT.COLOR_LIST_FOREGROUND),
	OPERATION_CREASE("org.frisket.operation.crease", SWT.COLOR_LIST_FOREGROUND),
	OPERATION_PERFORATE("org.frisket.operation.perforate", SWT.COLOR_LIST_FOREGROUND),
	OPERATION_DRAW("org.frisket.operation.draw", SWT.COLOR_LIST_FOREGROUND),
	OPERATION_PRINT("org.frisket.operation.print", SWT.COLOR_LIST_FOREGROUND),

	FINDING_BLOCKING("org.frisket.finding.blocking", SWT.COLOR_LIST_FOREGROUND),
	/** Of words on grounds that follow the window system's theme. */
	FINDING_MESSAGE("org.frisket.finding.message", SWT.COLOR_LIST_FOREGROUND),
	FINDING_CAUTION("org.frisket.finding.caution", SWT.COLOR_LIST_FOREGROUND),
	FINDING_NOTE("org.frisket.finding.note", SWT.COLOR_LIST_FOREGROUND);

	private final String id;
	private final int systemColour;

	ThemeColour(String id, int systemColour) {
		this.id = id;
		this.systemColour = systemColour;
	}

	/** The id of the colour definition. */
	public String id() {
		return id;
	}

	/**
	 * The colour as the theme has it now, or the nearest colour of the system where no theme is loaded. Ask again at
	 * each paint: the theme may change. Only for the UI thread.
	 */
	public Color colour() {
		ColorRegistry registry = JFaceResources.getColorRegistry();
		Color themed = registry.get(id);
		return themed != null ? themed : Display.getCurrent().getSystemColor(systemColour);
	}
}
