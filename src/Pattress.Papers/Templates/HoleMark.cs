using System.Globalization;
using Pattress.Jobs;

namespace Pattress.Papers.Templates;

/// <summary>What a hole goes by on every paper: its bracket's number, then a letter where the bracket has several.</summary>
public static class HoleMark
{
    public static string Of(BracketAnswer bracket, int hole) =>
        (bracket.Index + 1).ToString(CultureInfo.InvariantCulture) + (bracket.Holes.Count > 1 ? ((char)('a' + hole)).ToString() : "");
}
