/**
 * Rule packs: load, schema check, build on one another, tables, examples proved through judgement.
 * May import judgement, formula, workings, record, quantity.
 */
@NullMarked
package org.wellcurb.rulepack;

import org.jspecify.annotations.NullMarked;
