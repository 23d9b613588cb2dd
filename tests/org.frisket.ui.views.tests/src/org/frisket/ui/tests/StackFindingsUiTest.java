package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

import org.eclipse.swt.graphics.Rectangle;
import org.frisket.ui.bench.internal.parts.JobPart;
import org.frisket.ui.views.Views;
import org.frisket.ui.views.internal.stack.StackCanvas;
import org.frisket.ui.views.internal.stack.StackView;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Findings are counted in the stack, and a click on the count shows them. */
class StackFindingsUiTest extends OpenBench {

	private final TroubledJob troubled = new TroubledJob();
	private StackCanvas stack;

	@Override
	protected Path jobFile() throws IOException {
		return troubled.save(folder.resolve("troubled.frjob"));
	}

	@BeforeEach
	void openStack() throws Exception {
		stack = ((StackView) page().showView(Views.STACK_ID)).canvas();
		page().activate(page().findView(Views.STACK_ID));
		Screen.settle();
	}

	/** A raised flag says its measure too, and is the wider for it. */
	private int widestFlag() {
		return ((JobPart) bench.viewer().getContents()).flags().stream().mapToInt(flag -> flag.getBounds().width).max()
				.orElseThrow();
	}

	@Test
	void clickOnTheCountOfAnElementRaisesItsFlag() {
		Rectangle badge = stack.findingsOf(element(troubled.strip));
		assertTrue(badge.width > 0);
		assertEquals(0, stack.findingsOf(element(troubled.plate)).width);
		int before = widestFlag();
		Screen.click(stack, badge.x + badge.width / 2, badge.y + badge.height / 2);
		assertTrue(widestFlag() > before);
		assertEquals(List.of(troubled.strip.getId()), selectedIds());
	}
}
