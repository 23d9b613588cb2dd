package org.frisket.ui.tests;

import static org.junit.jupiter.api.Assertions.assertSame;

import org.frisket.ui.bench.internal.picture.ElementPicture;
import org.frisket.ui.bench.internal.picture.JobPicture;
import org.junit.jupiter.api.Test;

class JobPictureTest {

	@Test
	void elementThatIsTooNewHasAnEmptyPicture() {
		assertSame(ElementPicture.NONE, JobPicture.NONE.element("e7"));
	}

	@Test
	void elementWithoutAnIdHasAnEmptyPicture() {
		assertSame(ElementPicture.NONE, JobPicture.NONE.element(null));
	}
}
