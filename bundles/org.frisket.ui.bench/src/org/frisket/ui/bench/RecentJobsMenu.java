package org.frisket.ui.bench;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

import org.eclipse.jface.action.Action;
import org.eclipse.jface.action.ActionContributionItem;
import org.eclipse.jface.action.IContributionItem;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.actions.CompoundContributionItem;
import org.eclipse.ui.menus.CommandContributionItem;
import org.eclipse.ui.menus.CommandContributionItemParameter;
import org.frisket.ui.bench.internal.files.RecentJobs;

/** The job files that were opened or saved last, numbered; one that is gone is grey. */
public final class RecentJobsMenu extends CompoundContributionItem {

	private static final int LAST_MNEMONIC = 9;

	@Override
	protected IContributionItem[] getContributionItems() {
		List<IContributionItem> items = new ArrayList<>();
		for (Path path : RecentJobs.shared().all()) {
			int number = items.size() + 1;
			String label = label(path, number);
			items.add(Files.exists(path) ? item(path, number, label) : gone(label));
		}
		return items.isEmpty() ? new IContributionItem[] { gone(Messages.RecentJobsMenu_none) }
				: items.toArray(IContributionItem[]::new);
	}

	private static String label(Path path, int number) {
		String pattern = number <= LAST_MNEMONIC ? Messages.RecentJobsMenu_item : Messages.RecentJobsMenu_itemPlain;
		return NLS.bind(pattern, new Object[] { number, shown(path.getFileName()), shown(path.getParent()) });
	}

	/** An ampersand would become a mnemonic. */
	private static String shown(Path path) {
		return String.valueOf(path).replace("&", "&&"); //$NON-NLS-1$ //$NON-NLS-2$
	}

	private static IContributionItem item(Path path, int number, String label) {
		CommandContributionItemParameter item = new CommandContributionItemParameter(
				PlatformUI.getWorkbench().getActiveWorkbenchWindow(), Bench.OPEN_RECENT_COMMAND_ID + number,
				Bench.OPEN_RECENT_COMMAND_ID, CommandContributionItem.STYLE_PUSH);
		item.label = label;
		item.parameters = Map.of(Bench.OPEN_RECENT_PATH, path.toString());
		return new CommandContributionItem(item);
	}

	private static IContributionItem gone(String label) {
		Action action = new Action(label) {
			// only to be read
		};
		action.setEnabled(false);
		return new ActionContributionItem(action);
	}
}
