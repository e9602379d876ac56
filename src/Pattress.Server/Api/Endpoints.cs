using System.Text;

namespace Pattress.Server.Api;

/// <summary>The HTTP API: the same documents as the command line's.</summary>
internal static class Endpoints
{
    public const string Addresses = "GET /api/schema, /api/demo";

    public static void Map(WebApplication app)
    {
        app.MapGet("/api/schema", () => Json(Questions.Schema, "application/schema+json"));
        app.MapGet("/api/demo", () => Json(Questions.DemoJob));
        app.Map("/api/{**rest}", (HttpContext http) => { http.Response.StatusCode = 404; });
    }

    private static IResult Json(string json, string type = "application/json") => Results.Text(json, type, Encoding.UTF8);
}
