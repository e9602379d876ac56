using Pattress.Jobs;
using Pattress.Supports;
using Pattress.Walls;

namespace Pattress.Planning.Views;

/// <summary>
/// What a wall says by itself, before the house is asked: the costly part of a plan. It depends on the wall and on the
/// settings alone, and on the rates that the job's holes have taught, so it holds as long as none of them has changed.
/// </summary>
internal sealed record OneWall(Wall Wall, WallPosterior Posterior, WallEvidence Evidence, IReadOnlyList<ZoneOfWall> Zones, SupportBelief Line, LineRates Rates)
{
    public static OneWall Of(Wall wall, Settings settings, LineRates rates)
    {
        var line = SupportModel.Infer(LineScans.Whole(wall, rates));
        var evidence = Views.Evidence.Of(wall, settings, line);
        var plain = HouseBelief.Plain(evidence);
        var posterior = new WallPosterior(plain, WallRates.Default);
        return new(wall, posterior, plain, HouseBelief.DrawnFirst(wall, WallModel.Zones(evidence, posterior)), line, rates);
    }
}
