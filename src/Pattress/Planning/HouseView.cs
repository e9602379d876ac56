using Pattress.Jobs;
using Pattress.Planning.Views;

namespace Pattress.Planning;

/// <summary>All walls of a job as believed.</summary>
public static class HouseView
{
    public static IReadOnlyDictionary<string, WallView> Of(Job job)
    {
        var belief = new HouseBelief(job);
        return job.Walls.ToDictionary(w => w.Id, WallView (w) => new BuiltView(w, belief), StringComparer.Ordinal);
    }
}
