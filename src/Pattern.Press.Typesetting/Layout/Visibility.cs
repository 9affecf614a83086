using System.Runtime.CompilerServices;

// Line breaking and page breaking are checked by themselves, below the level of whole books.
[assembly: InternalsVisibleTo("Pattern.Press.Typesetting.Tests")]
