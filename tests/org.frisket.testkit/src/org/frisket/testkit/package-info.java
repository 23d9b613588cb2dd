/** Sample jobs, independent measures, and the contracts that every contribution, a studio's own too, has to keep. */
package org.frisket.testkit;
