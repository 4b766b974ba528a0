/**
 * The branch's side of the customer's page: links, what is shared, what the customer answered, and how it looks.
 * <p>Start at {@code DeskPages}. Only those who may share with customers get in.
 */
@NullMarked
package org.plumbrow.status.desk;

import org.jspecify.annotations.NullMarked;
