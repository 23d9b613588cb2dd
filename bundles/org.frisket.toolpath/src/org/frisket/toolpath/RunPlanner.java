package org.frisket.toolpath;

import java.util.List;
import java.util.Map;

import org.frisket.geometry.Monitor;
import org.frisket.toolpath.internal.plan.Intake;
import org.frisket.toolpath.internal.plan.Planning;

/**
 * Makes of the lines of a sheet the run that works them.
 * <p>
 * The order: stage by stage; in a stage tool by tool, with as few changes of tools as can be. Where a blade goes into
 * the sheet, a line comes after all that lies within it, and the outer cut of a part after all of the part, with
 * whatever tool. The last pass counts: of lines that are gone over sheet by sheet all are cut through in the last round.
 * Apart from that the shortest way found decides, from home through all strokes and home again. It is looked for part
 * by part, what lies within right before what is around it, and through all at once; the shorter one is taken. So small
 * lines come before the large ones around them, and near ones before far ones as far as that is no detour.
 * <p>
 * Closed lines are begun in the middle of straight edges or at smooth places, near the way. A trailing blade comes down
 * before that and goes on beyond it. Open lines are worked from either end, and back for the next pass.
 * <p>
 * Of edges that neighbours share, the line that comes first in the list keeps the edge, and its job pays for it; what
 * is left of the others are open lines with their ids. As each such edge bounds two parts, all that lies within any of
 * the parts that hang together so is done before the first of their edges.
 */
public final class RunPlanner {

	private RunPlanner() {
	}

	/**
	 * @param lines   those without length are left out
	 * @param tools   by id; all that the lines name
	 * @param monitor when cancelled a {@link java.util.concurrent.CancellationException} is thrown
	 * @throws IllegalArgumentException if a line names a tool that is not there, or has a place that is no number
	 */
	public static Run plan(List<Line> lines, Map<String, ToolMotion> tools, Carriage carriage, RunChoices choices,
			Monitor monitor) {
		return new Planning(tools, carriage, choices, monitor).run(Intake.worked(lines, tools));
	}
}
