//! From syntax trees to a resolved design: names, kinds, units, expressions and templates, and the way back to the text.
