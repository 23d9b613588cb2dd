package org.frisket.ui.material.internal.machines;

import org.eclipse.osgi.util.NLS;

/** What the page of machines and tools says. */
final class Messages extends NLS {

	public static String Calibration_unknown;
	public static String DeskBar_again;
	public static String DeskBar_readOnly;
	public static String DeskBar_trouble;
	public static String MachineWizard_nameless;
	public static String MachineWizard_title;
	public static String MachinesEditor_change;
	public static String MachinesEditor_keeping;
	public static String MachinesEditor_removing;
	public static String MachinesInput_name;
	public static String MachinesInput_toolTip;
	public static String OffsetPart_best;
	public static String OffsetPart_cell;
	public static String OffsetPart_cellOf;
	public static String OffsetPart_cells;
	public static String OffsetPart_keep;
	public static String OffsetPart_miss;
	public static String OffsetPart_nothing;
	public static String OffsetPart_open;
	public static String OffsetPart_result;
	public static String OffsetPart_step;
	public static String OffsetPart_steps;
	public static String OffsetPart_thisOne;
	public static String OffsetPart_title;
	public static String ProfileList_machines;
	public static String ProfileList_newMachine;
	public static String ProfileList_newTool;
	public static String ProfileList_remove;
	public static String ProfileList_removeTip;
	public static String ProfileList_rules;
	public static String ProfileList_tools;
	public static String ProfilePage_empty;
	public static String ProfilePage_machineNote;
	public static String ProfilePage_rules;
	public static String ProfilePage_rulesNote;
	public static String ProfilePage_title;
	public static String ProfilePage_toolNote;
	public static String QuestionPage_how;
	public static String QuestionPage_title;
	public static String QuestionPage_where;
	public static String QuestionPage_why;
	public static String ScalePart_across;
	public static String ScalePart_down;
	public static String ScalePart_error;
	public static String ScalePart_keep;
	public static String ScalePart_nothing;
	public static String ScalePart_open;
	public static String ScalePart_result;
	public static String ScalePart_rightDown;
	public static String ScalePart_rightTop;
	public static String ScalePart_skew;
	public static String ScalePart_steps;
	public static String ScalePart_title;
	public static String StudioDesk_reading;
	public static String ToolName_blade;
	public static String ToolName_creasingWheel;
	public static String ToolName_pen;
	public static String ToolName_perforatingBlade;
	public static String WearBar_how;
	public static String WearBar_metres;

	static {
		initializeMessages("org.frisket.ui.material.internal.machines.messages", Messages.class); //$NON-NLS-1$
	}

	private Messages() {
	}
}
