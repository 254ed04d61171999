//! print
