using Pattress.Jobs;
using Pattress.Walls;

namespace Pattress.Planning.Views;

/// <summary>Which check settles what a wall is.</summary>
internal static class WallChecks
{
    public static CheckToDo? Best(Wall wall, WallBelief belief, Point? at, IReadOnlyList<string> items) => null;
}
