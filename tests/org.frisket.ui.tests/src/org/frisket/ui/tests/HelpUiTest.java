package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.eclipse.swt.custom.StyleRange;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.PlatformUI;
import org.frisket.app.internal.help.HelpView;
import org.frisket.ui.views.Views;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

/** Help at the key, its search and its links. */
class HelpUiTest extends OpenBench {

	@AfterEach
	void closeHelp() {
		page().hideView(page().findView(HelpView.ID));
	}

	private static HelpView press() {
		Screen.key("F1");
		Screen.waitUntil("help is there", () -> page().findView(HelpView.ID) != null);
		Screen.settle();
		return (HelpView) page().findView(HelpView.ID);
	}

	private static <T extends Control> T find(Class<T> type) {
		Control text = Dialogs.all(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell())
				.filter(StyledText.class::isInstance).findFirst().orElseThrow();
		return Dialogs.all(text.getParent().getParent()).filter(type::isInstance).map(type::cast).findFirst()
				.orElseThrow();
	}

	@Test
	void keyOpensThePageAboutWhatIsWorkedIn() throws Exception {
		HelpView help = press();
		assertEquals("bench", help.page());
		for (String[] view : new String[][] { { Views.MAKEREADY_ID, "makeready" }, { Views.STACK_ID, "stack" },
				{ Views.PROPERTIES_ID, "properties" } }) {
			IViewPart part = page().showView(view[0]);
			Screen.waitUntil("it is in use", () -> page().getActivePart() == part);
			assertEquals(view[1], press().page());
		}
		Screen.keep(Screen.picture(PlatformUI.getWorkbench().getActiveWorkbenchWindow().getShell()), "help");
	}

	@Test
	void whoTypesAWordingGetsItsPage() {
		listen(bench);
		Screen.key("Insert");
		assertEquals("wording", press().page());
		bench.typing().end(false);
	}

	@Test
	void wordsAreFoundWhileTheyAreTyped() throws Exception {
		HelpView help = press();
		Text search = find(Text.class);
		Screen.waitUntil("the field listens", search::isFocusControl);
		Screen.type("poiso");
		Screen.waitUntil("the page is found", () -> help.page().equals("safety"));
		Table list = find(Table.class);
		assertEquals(1, list.getItemCount());
		Screen.keep(Screen.picture(search.getShell()), "help-search");
		Screen.key("Escape");
		Screen.waitUntil("the contents are back", () -> list.getItemCount() > 5);
		assertEquals("safety", help.page());
		Screen.type("zebra");
		assertEquals(0, list.getItemCount());
	}

	@Test
	void linkLeadsToItsPage() {
		HelpView help = press();
		help.show("makeready");
		StyledText text = find(StyledText.class);
		StyleRange link = null;
		for (StyleRange range : text.getStyleRanges()) {
			if ("mats".equals(range.data)) {
				link = range;
			}
		}
		text.setTopIndex(text.getLineAtOffset(link.start));
		Screen.settle();
		Point place = text.getLocationAtOffset(link.start + 1);
		Screen.click(text, place.x + 2, place.y + 6);
		Screen.waitUntil("the page has changed", () -> help.page().equals("mats"));
		assertTrue(text.getText().startsWith("Mats"), text.getText());
	}
}
