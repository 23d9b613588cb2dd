package org.frisket.ui.views.internal.stack;

import java.util.ArrayList;
import java.util.List;

import org.eclipse.swt.graphics.GC;
import org.frisket.model.Group;
import org.frisket.model.Job;
import org.frisket.model.Jobs;

/** A bracket beside the members of each group; those of inner groups stand nearer to the names. */
final class GroupBrackets {

	private static final int LANE_PX = 5;
	private static final int LANES = 3;
	private static final int EDGE_PX = 3;

	private record Bracket(int lane, List<Integer> members) {
	}

	private final List<Bracket> brackets = new ArrayList<>();

	/** @param job null for none */
	GroupBrackets(Job job, StackRows rows) {
		if (job != null) {
			add(job.getGroups(), 0, rows, new Lanes(LANES));
		}
	}

	/** What they hold. */
	List<?> list() {
		return brackets;
	}

	private void add(List<Group> groups, int least, StackRows rows, Lanes lanes) {
		for (Group group : groups) {
			List<Integer> members = Jobs.elements(group).stream().map(rows::middleOf).filter(y -> y >= 0).sorted().toList();
			if (members.size() > 1) {
				int lane = lanes.take(least, members.get(0), members.get(members.size() - 1));
				brackets.add(new Bracket(lane, members));
				add(group.getGroups(), lane + 1, rows, lanes);
			}
		}
	}

	/** @param scrolled how many pixels of the stack are above the control */
	void paint(GC gc, int scrolled) {
		gc.setForeground(RowMarks.ink(false));
		gc.setLineWidth(2);
		for (Bracket bracket : brackets) {
			int x = RowLayout.BRACKETS_PX + EDGE_PX + bracket.lane * LANE_PX;
			int end = RowLayout.BRACKETS_PX + EDGE_PX + LANES * LANE_PX;
			List<Integer> members = bracket.members;
			gc.drawLine(x, members.get(0) - scrolled, x, members.get(members.size() - 1) - scrolled);
			members.forEach(y -> gc.drawLine(x, y - scrolled, end, y - scrolled));
		}
		gc.setLineWidth(1);
	}
}
