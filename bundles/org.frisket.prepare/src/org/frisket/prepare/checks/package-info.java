/** What a makeready check is; the built-in ones come through the same extension point as a studio's own. */
package org.frisket.prepare.checks;
