package org.frisket.ui.material.internal.trials;

import org.eclipse.osgi.util.NLS;

/** What the page of test sheets says. */
final class Messages extends NLS {

	public static String AdvicePart_before;
	public static String AdvicePart_best;
	public static String AdvicePart_cautions;
	public static String AdvicePart_confidence;
	public static String AdvicePart_noneGood;
	public static String AdvicePart_title;
	public static String AdvicePart_unjudged;
	public static String AdvicePart_window;
	public static String Advising_name;
	public static String ChartFile_failed;
	public static String ChartFile_name;
	public static String ChartFile_written;
	public static String EarlierSheets_how;
	public static String EarlierSheets_none;
	public static String EarlierSheets_sheet;
	public static String EarlierSheets_title;
	public static String MarkVerdict_clear;
	public static String MarkVerdict_name;
	public static String OperationHint_words;
	public static String PressureCanvas_advised;
	public static String PressureCanvas_empty;
	public static String PressureCanvas_steps;
	public static String PressureCanvas_title;
	public static String PressureCanvas_unknown;
	public static String SettingsWords_board;
	public static String SettingsWords_card;
	public static String SettingsWords_exposure;
	public static String SettingsWords_fabric;
	public static String SettingsWords_film;
	public static String SettingsWords_foam;
	public static String SettingsWords_label;
	public static String SettingsWords_other;
	public static String SettingsWords_paper;
	public static String SettingsWords_parameterExposure;
	public static String SettingsWords_parameterPasses;
	public static String SettingsWords_parameterPressure;
	public static String SettingsWords_parameterSpeed;
	public static String SettingsWords_settings;
	public static String SettingsWords_stock;
	public static String SheetCanvas_none;
	public static String SheetForm_across;
	public static String SheetForm_down;
	public static String SheetForm_machine;
	public static String SheetForm_offShelf;
	public static String SheetForm_operation;
	public static String SheetForm_plainMachine;
	public static String SheetForm_size;
	public static String SheetForm_stock;
	public static String SheetForm_tool;
	public static String SheetForm_usualTool;
	public static String SheetForm_weight;
	public static String SheetForm_weightNegative;
	public static String SheetKeeper_making;
	public static String SheetKeeper_saving;
	public static String SheetPainter_caption;
	public static String SweepRow_from;
	public static String SweepRow_step;
	public static String SweepRow_to;
	public static String TestSheetEditor_gone;
	public static String TestSheetEditor_planned;
	public static String TestSheetEditor_wrongInput;
	public static String TestSheetInput_name;
	public static String TestSheetInput_new;
	public static String TestSheetPage_another;
	public static String TestSheetPage_cell;
	public static String TestSheetPage_open;
	public static String TestSheetPage_plan;
	public static String TestSheetPage_saveChart;
	public static String TestSheetPage_unjudged;
	public static String VerdictButtons_key;
	public static String VerdictButtons_none;

	static {
		initializeMessages("org.frisket.ui.material.internal.trials.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
